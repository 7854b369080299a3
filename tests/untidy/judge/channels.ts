import type { BookTruth, ChannelTruth, OtherAnswer } from '../truth.ts';
import type { SeenChannel, SeenState } from './seen.ts';
import { fieldLeftOutSaid, leftOutSaid, type Saying, sheetSaid } from './said.ts';

/** What a comparison finds: `missing` is said by the report itself, `wrong` is not. */
export interface Found {
  readonly wrong: string[];
  readonly missing: string[];
  /** Channels whose danger was judged, and rightly. */
  judged: number;
}

export interface Circumstances {
  readonly truth: BookTruth;
  readonly sayings: readonly Saying[];
  readonly critical: readonly string[] | null;
  /** Whether a person has answered what was asked. */
  readonly answered: boolean;
}

/** Numbers agree to a part in ten thousand: enough for truths that were written with four digits behind the point. */
function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-4 * Math.abs(b);
}

const needed = ['configured', 'measured', 'alert', 'danger'] as const;
const meanings = {
  configured: 'configured sensitivity',
  measured: 'measured sensitivity',
  alert: 'alert',
  danger: 'danger',
} as const;

/** Compares one channel of a report with the truth of it. */
export function compareChannel(
  channel: ChannelTruth,
  seen: SeenChannel,
  around: Circumstances,
  found: Found,
): void {
  const name = `${channel.machine ?? ''} ${channel.tag.join(' ')}`.trim();
  const { truth, sayings, answered } = around;
  const saidHere = seen.remarks.length > 0 || leftOutSaid(sayings, channel.tag.join(' '), channel.places);
  const mayBeIncomplete = channel.verdict === 'incomplete' || channel.also.includes('incomplete');
  const miss = (what: string, said: boolean): void => {
    if (!said) found.wrong.push(`${name}: ${what} left out, and nothing says so`);
    else if (!mayBeIncomplete || channel.mustAsk) found.missing.push(`${name}: ${what} left out, said`);
  };
  compareMachine(
    channel,
    seen,
    around,
    (what, said) => {
      miss(what, said);
    },
    (why) => found.wrong.push(`${name}: ${why}`),
  );
  if (channel.kind !== undefined && seen.kind !== null && seen.kind !== channel.kind) {
    found.wrong.push(`${name}: read as ${seen.kind}, is ${channel.kind}`);
  }
  const judged = seen.found.verdict !== 'incomplete';
  if (channel.mustAsk && !answered && judged) {
    found.wrong.push(`${name}: judged ${seen.found.verdict} though only a person can say what holds`);
    return;
  }
  const expected = answerFitting(channel, seen.found, channel.mustAsk);
  for (const quantity of needed) {
    const right = expected[quantity];
    const read = seen.found[quantity];
    if (read === null) {
      if (right !== null) {
        const fields = truth.fields.filter(({ meaning }) => meaning === meanings[quantity]);
        const own = fields.filter(({ sheet }) => channel.places.some((place) => place.sheet === sheet));
        miss(
          meanings[quantity],
          saidHere && sheetSaid([...seen.remarks, ...sayings], own.length > 0 ? own : fields),
        );
      }
    } else if (right === null) {
      found.wrong.push(`${name}: ${meanings[quantity]} read as ${read}, but none is known`);
    } else if (!near(read, right)) {
      found.wrong.push(`${name}: ${meanings[quantity]} read as ${read}, is ${right}`);
    }
  }
  if (judged) {
    const rightVerdicts: readonly string[] = [expected.verdict, ...channel.also];
    if (!rightVerdicts.includes(seen.found.verdict)) {
      found.wrong.push(`${name}: danger ${seen.found.verdict}, is ${expected.verdict}`);
    } else found.judged += 1;
    compareEffective(name, seen, found);
    if (
      seen.found.verdict === 'late' &&
      channel.asLeft === null &&
      around.critical &&
      !around.critical.some((tag) => sameTag(channel.tag, tag))
    ) {
      found.wrong.push(`${name}: its late danger stands in no critical action`);
    }
  } else if (expected.verdict !== 'incomplete') miss('danger', saidHere);
  compareLeft(name, channel, seen, around, found, saidHere);
  compareOptional(name, channel, seen, around, found, saidHere);
}

function compareMachine(
  { machine, machineAlso = [], places }: ChannelTruth,
  seen: SeenChannel,
  { truth, sayings }: Circumstances,
  miss: (what: string, said: boolean) => void,
  wrong: (why: string) => void,
): void {
  if (
    machine === null ||
    sameText(seen.machine, machine) ||
    machineAlso.some((also) => sameText(seen.machine, also))
  )
    return;
  if (seen.machine.trim() !== '') wrong(`machine read as ${seen.machine}`);
  else
    miss(
      'machine',
      fieldLeftOutSaid(
        sayings,
        truth.fields.filter(
          (field) => field.meaning === 'machine' && places.some(({ sheet }) => sheet === field.sheet),
        ),
      ),
    );
}

/** The truth, or what is true by the other answer of a person where that is what was read. */
function answerFitting(
  channel: ChannelTruth,
  seen: SeenState,
  open: boolean,
): ChannelTruth | (ChannelTruth & OtherAnswer) {
  if (!open) return channel;
  const fits = (one: {
    readonly configured?: number | null;
    readonly measured?: number | null;
    readonly danger?: number | null;
  }): boolean =>
    (['configured', 'measured', 'danger'] as const).every((key) => {
      const right = one[key];
      const read = seen[key];
      return right === undefined || right === null || read === null || near(read, right);
    });
  if (fits(channel)) return channel;
  const other = channel.otherwise.find((one) => fits({ ...channel, ...one }));
  return other ? { ...channel, ...other } : channel;
}

function compareEffective(name: string, { found: state, kind }: SeenChannel, found: Found): void {
  const { configured, measured, danger, effective } = state;
  if (kind === 'axial' || configured === null || measured === null || danger === null || effective === null)
    return;
  const right = (danger * configured) / measured;
  if (!near(effective, right)) found.wrong.push(`${name}: danger acts at ${effective} mil, is ${right}`);
}

function compareLeft(
  name: string,
  channel: ChannelTruth,
  { left }: SeenChannel,
  { truth, sayings }: Circumstances,
  found: Found,
  saidHere: boolean,
): void {
  if (channel.asLeft === null) {
    if (left !== null && left.measured !== null)
      found.wrong.push(`${name}: as left read as ${left.measured}, but it was measured once`);
    return;
  }
  if (left === null || left.measured === null) {
    if (channel.measured === null || channel.mustAsk) return;
    const fields = truth.fields.filter(({ meaning }) => meaning === 'as-left sensitivity');
    if (saidHere || fieldLeftOutSaid(sayings, fields)) found.missing.push(`${name}: as left left out, said`);
    else found.wrong.push(`${name}: as left left out, and nothing says so`);
    return;
  }
  if (!near(left.measured, channel.asLeft))
    found.wrong.push(`${name}: as left read as ${left.measured}, is ${channel.asLeft}`);
  if (channel.asLeftVerdict === null || left.verdict === channel.asLeftVerdict) return;
  // Without the danger, which is said to be left out, as left can't be judged either.
  if (left.verdict === 'incomplete' && left.danger === null && channel.danger !== null && saidHere)
    found.missing.push(`${name}: as left not judged, said`);
  else found.wrong.push(`${name}: as left ${left.verdict}, is ${channel.asLeftVerdict}`);
}

const optionalMeanings = {
  fullScale: 'full scale',
  limit: 'limit',
  gapVoltage: 'gap voltage',
  group: 'voting group',
  voting: 'voting',
  bypass: 'bypass',
} as const;

function compareOptional(
  name: string,
  channel: ChannelTruth,
  seen: SeenChannel,
  { truth, sayings }: Circumstances,
  found: Found,
  saidHere: boolean,
): void {
  const { inputs } = seen;
  if (inputs === null || seen.found.verdict === 'incomplete') return;
  for (const key of Object.keys(optionalMeanings) as (keyof typeof optionalMeanings)[]) {
    const right = channel.optional[key];
    if (right === undefined) continue;
    const read = inputs[key];
    const meaning = optionalMeanings[key];
    const nothing = read === null || (key === 'bypass' && read === false);
    if (nothing && (right === null || right === false)) continue;
    if (nothing) {
      const fields = truth.fields.filter((field) => field.meaning === meaning);
      if (saidHere || fieldLeftOutSaid(sayings, fields))
        found.missing.push(`${name}: ${meaning} left out, said`);
      else found.wrong.push(`${name}: ${meaning} left out, and nothing says so`);
    } else if (right === null || !sameValue(read, right)) {
      found.wrong.push(`${name}: ${meaning} read as ${String(read)}, is ${String(right)}`);
    }
  }
}

function sameValue(read: number | string | boolean, right: number | string | boolean): boolean {
  if (typeof read === 'number' && typeof right === 'number') return near(read, right);
  if (typeof read === 'string' && typeof right === 'string') return sameText(read, right);
  return read === right;
}

function letters(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replaceAll('O', '0');
}

export function sameText(a: string, b: string): boolean {
  return letters(a) === letters(b);
}

/** Whether a tag of the report is the one meant; one made of several cells holds all of them. */
export function sameTag(parts: readonly string[], tag: string): boolean {
  const [first] = parts;
  if (parts.length === 1) return sameText(first!, tag);
  const read = letters(tag);
  return parts.every((part) => read.includes(letters(part)));
}
