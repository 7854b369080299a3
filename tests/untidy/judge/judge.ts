import type { BookTruth, ChannelTruth, FieldTruth } from '../truth.ts';
import { compareChannel, type Found, sameTag, sameText } from './channels.ts';
import type { Judgement, Outcome } from './outcome.ts';
import { leftOutSaid, sayings, useSaid } from './said.ts';
import { seen, type SeenChannel } from './seen.ts';

/**
 * What a run over a workbook is worth against its truth. Strict: a wrong number, verdict, machine or kind, a row that is
 * no channel, an omission that nobody is told of, or a judgement that only a person could make, is silently wrong.
 */
export function judge(truth: BookTruth, outcome: Outcome): Judgement {
  return graded(truth, outcome, false);
}

function graded(truth: BookTruth, outcome: Outcome, answered: boolean): Judgement {
  if (outcome.report === null || outcome.report === undefined) {
    return asked(truth, outcome, answered, [outcome.refusal ?? 'refused without a word'], 'refused');
  }
  const found = compare(truth, outcome.report, answered);
  if (found.wrong.length > 0)
    return { grade: 'silently wrong', reasons: found.wrong, unsaid: [], misleads: false };
  const unsaid = unsaidMeanings(truth, outcome.report);
  if (found.missing.length === 0) return { grade: 'read right', reasons: [], unsaid, misleads: false };
  const rest = found.judged > 0 ? 'partly read' : 'refused';
  return { ...asked(truth, outcome, answered, found.missing, rest), unsaid };
}

/** `asked` where the proposal is one that a person can accept as it is; else the grade without it. */
function asked(
  truth: BookTruth,
  outcome: Outcome,
  answered: boolean,
  reasons: readonly string[],
  rest: Judgement['grade'],
): Judgement {
  if (answered) return { grade: rest, reasons, unsaid: [], misleads: false };
  if (outcome.accepted) {
    const again = graded(truth, outcome.accepted(), true);
    if (again.grade === 'read right') return { grade: 'asked', reasons, unsaid: [], misleads: false };
    const misleads = again.grade === 'silently wrong';
    return {
      grade: rest,
      reasons: [...reasons, ...again.reasons.map((reason) => `Proposal accepted: ${reason}`)],
      unsaid: [],
      misleads,
    };
  }
  return { grade: namesAllPlaces(truth, outcome) ? 'asked' : rest, reasons, unsaid: [], misleads: false };
}

/** Whether the places that only a person can confirm are all named, so that there is something to accept. */
function namesAllPlaces(truth: BookTruth, { proposed, choice }: Outcome): boolean {
  if (truth.choice.length > 0) return truth.choice.every((sheet) => choice.includes(sheet));
  if (proposed.length === 0) return false;
  return [...needed(truth.fields)].every(([, fields]) =>
    fields.some(({ sheet, column, row, meaning }) =>
      proposed.some(
        (place) =>
          place.meaning === meaning &&
          place.sheet === sheet &&
          (column === undefined || place.column === column) &&
          (row === undefined || place.row === row),
      ),
    ),
  );
}

const neededMeanings: ReadonlySet<string> = new Set([
  'tag',
  'measured sensitivity',
  'configured sensitivity',
  'alert',
  'danger',
  'as-left sensitivity',
]);

/** Places of each needed meaning on each sheet. */
function needed(fields: readonly FieldTruth[]): Map<string, FieldTruth[]> {
  const found = new Map<string, FieldTruth[]>();
  for (const field of fields) {
    if (!neededMeanings.has(field.meaning)) continue;
    const key = `${field.meaning} on ${field.sheet}`;
    found.set(key, [...(found.get(key) ?? []), field]);
  }
  return found;
}

function unsaidMeanings(truth: BookTruth, report: unknown): string[] {
  const all = sayings(report);
  return [...needed(truth.fields)].flatMap(([key, fields]) =>
    fields.every(({ standard }) => standard) || useSaid(all, fields) ? [] : [key],
  );
}

function compare(truth: BookTruth, report: unknown, answered: boolean): Found {
  const found: Found = { wrong: [], missing: [], judged: 0 };
  const { channels, critical } = seen(report);
  const around = { truth, sayings: sayings(report), critical, answered };
  const open = [...channels];
  const pairs = pair(truth.channels, open);
  for (const [channel, read] of pairs) {
    const name = `${channel.machine ?? ''} ${channel.tag.join(' ')}`.trim();
    if (read) compareChannel(channel, read, around, found);
    else if (leftOutSaid(around.sayings, channel.tag.join(' '), channel.places))
      found.missing.push(`${name}: left out, said`);
    else found.wrong.push(`${name}: left out, and nothing says so`);
  }
  for (const extra of open) {
    const { verdict } = extra.found;
    const again = pairs.find(([channel]) => sameTag(channel.tag, extra.tag));
    const expected =
      truth.mayBeIncomplete.some((tag) => sameText(tag, extra.tag)) ||
      again?.[0].also.includes('incomplete') === true;
    if (verdict !== 'incomplete' || !expected) {
      found.wrong.push(
        `'${extra.tag}'${extra.machine === '' ? '' : ` of ${extra.machine}`} is ${again ? 'there once more' : 'no channel'}, read as ${verdict}`,
      );
    }
  }
  return found;
}

/** Each true channel with the one of the report that is meant; those taken leave `open`. */
function pair(channels: readonly ChannelTruth[], open: SeenChannel[]): [ChannelTruth, SeenChannel | null][] {
  const taken = new Map<ChannelTruth, SeenChannel>();
  const take = (fits: (channel: ChannelTruth, read: SeenChannel) => boolean): void => {
    for (const channel of channels) {
      if (taken.has(channel)) continue;
      const fitting = open.filter((read) => sameTag(channel.tag, read.tag) && fits(channel, read));
      const best = fitting.find(({ found }) => found.verdict !== 'incomplete') ?? fitting[0];
      if (!best) continue;
      taken.set(channel, best);
      open.splice(open.indexOf(best), 1);
    }
  };
  take(({ machine }, read) => machine !== null && sameText(machine, read.machine));
  take(
    ({ machine, machineAlso = [] }, read) =>
      machine === null || machineAlso.some((also) => sameText(also, read.machine)),
  );
  take(() => true);
  return channels.map((channel) => [channel, taken.get(channel) ?? null]);
}
