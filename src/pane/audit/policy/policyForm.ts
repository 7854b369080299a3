import { readNumber } from '../../../cells/number.ts';
import { policySchema, type Policy } from '../../../audit/model/policy.ts';
import { policyParts, type PolicyField } from './policyFields.ts';

/** What stands in each field of the form, by its path. */
export type PolicyTexts = Readonly<Record<string, string>>;

export interface PolicyRead {
  /** `null` while a field is wrong. */
  readonly policy: Policy | null;
  /** What is wrong, by the path of the field. */
  readonly faults: Readonly<Record<string, string>>;
}

const fields: readonly PolicyField[] = policyParts.flatMap((part) => part.fields);

/** The policy as it stands in the form. */
export function policyTexts(policy: Policy): PolicyTexts {
  // Groups that differ have no field: they go through the form as they are.
  const texts: Record<string, string> = { rule: policy.rule, groups: JSON.stringify(policy.groups) };
  for (const { path, scale = 1 } of fields) {
    const value = path.split('.').reduce<unknown>((at, key) => (isRecord(at) ? at[key] : undefined), policy);
    texts[path] =
      typeof value === 'number'
        ? String(Number((value * scale).toPrecision(12)))
        : typeof value === 'string'
          ? value
          : '';
  }
  return texts;
}

/** The policy that a form says, or what is wrong with its fields. */
export function readPolicy(texts: PolicyTexts): PolicyRead {
  const faults: Record<string, string> = {};
  const json: Record<string, unknown> = {
    rule: texts['rule'],
    groups: JSON.parse(texts['groups'] ?? '[]') as unknown,
  };
  for (const field of fields) {
    const text = (texts[field.path] ?? '').trim();
    const value = text === '' ? undefined : field.holds === 'number' ? numberOf(text, field) : text;
    if (text !== '' && value === undefined) faults[field.path] = fault(field);
    put(json, field.path, value);
  }
  for (const [key, entry] of Object.entries(record(json['ratedSensitivity']))) {
    const { value, unit } = record(entry);
    if (value === undefined && unit === undefined) record(json['ratedSensitivity'])[key] = null;
  }
  const parsed = policySchema.safeParse(json);
  if (!parsed.success) {
    for (const issue of parsed.error.issues) {
      const path = issue.path.join('.');
      const field = fields.find(
        (one) => one.path === path || (path === 'linearVolts' && one.path === 'linearVolts.far'),
      );
      if (field) faults[field.path] ??= fault(field);
      else faults[path] ??= issue.message;
    }
  }
  for (const field of fields) {
    const blank = (texts[field.path] ?? '').trim() === '';
    if (blank && !field.optional) faults[field.path] ??= fault(field);
  }
  const usable = parsed.success && Object.keys(faults).length === 0;
  return { policy: usable ? parsed.data : null, faults };
}

function fault({ says }: PolicyField): string {
  return `Write ${says}.`;
}

function numberOf(text: string, { scale = 1 }: PolicyField): number | undefined {
  const read = readNumber(text, undefined);
  return 'why' in read || (read.percent && scale === 1) ? undefined : read.value / scale;
}

function put(into: Record<string, unknown>, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let at = into;
  for (const key of keys) at = record((at[key] ??= {}));
  at[last] = value;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function record(value: unknown): Record<string, unknown> {
  return isRecord(value) ? value : {};
}
