import type { AuditOptions } from '../../../audit/audit.ts';
import { finish } from '../../../audit/model/steps.ts';
import { understand, type Understanding, NotUnderstood } from '../../../audit/read/understand/understand.ts';
import type { Progress } from '../../terminal.ts';
import { auditInput, type AuditedInput } from '../auditInput.ts';
import type { Input } from '../input.ts';

/** An audit that was tried. */
export interface Attempt {
  /** `null` where a person has to be asked before anything can be judged. */
  readonly audited: AuditedInput | null;
  /** What there is to ask; `null` where everything is certain. */
  readonly open: Understanding | null;
}

/**
 * Audits what was read as far as that can be done unasked.
 * @throws AuditRefused where no answer would help.
 */
export function attempt(input: Input, options: AuditOptions, progress: Progress): Attempt {
  try {
    const audited = auditInput(input, options, progress);
    const asks = audited.report.questions.length > 0;
    return { audited, open: asks ? understood(input, options) : null };
  } catch (error) {
    if (!(error instanceof NotUnderstood)) throw error;
    return { audited: null, open: error.understanding };
  }
}

/** What a workbook says, with what the map says of it. */
export function understood({ workbook }: Input, { map }: AuditOptions): Understanding {
  return finish(understand(workbook, map));
}
