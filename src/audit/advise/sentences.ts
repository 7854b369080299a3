import type { PlacedFact } from '../model/findings.ts';
import type { Question } from '../read/understand/questions/question.ts';
import type { Attention, ChannelResult, GroupResult, NotRead } from '../model/report.ts';
import { trips, type ThresholdResult } from '../model/threshold.ts';
import { capital, level, listed } from '../model/wording.ts';
import { lineReasons } from './lineReasons.ts';
import { messageOf } from './messages/messages.ts';
import { leftAsideTexts } from './messages/tables.ts';
import { groupSentences } from './groupSentences.ts';
import { ofRunUp } from './runUpText.ts';
import { ofReplayed } from './replaySentences.ts';
import { obstacleCure, obstaclesSaid } from './obstacles.ts';
import { questionSentences } from './questionSentences.ts';

/** An entry of the list of what needs action before its sentences are made, with what they are made from. */
export interface EntryFacts {
  readonly entry: Omit<Attention, 'headline' | 'doNext'>;
  readonly channel?: ChannelResult;
  readonly threshold?: ThresholdResult;
  readonly group?: GroupResult;
  readonly fact?: PlacedFact;
  readonly notRead?: NotRead;
  readonly question?: Question;
  readonly replayed?: Parameters<typeof ofReplayed>;
  readonly runUp?: Parameters<typeof ofRunUp>;
  /** Why a channel could not be judged. */
  readonly invalid?: readonly PlacedFact[];
}

export type Sentences = Pick<Attention, 'headline' | 'doNext'>;

/** One sentence that says it, number first, and one thing to do. */
export function sentencesOf(unsaid: EntryFacts): Sentences {
  const { channel, threshold, group, fact, notRead, question, replayed, runUp } = unsaid;
  if (notRead) return ofNotRead(notRead);
  if (question) return questionSentences(question);
  if (replayed) return ofReplayed(...replayed);
  if (runUp) return ofRunUp(...runUp);
  if (group) return groupSentences(group, unsaid.entry);
  if (channel && threshold) return ofThreshold(channel, threshold, unsaid);
  if (channel && unsaid.entry.code === 'in-bypass') return ofBypass(channel);
  if (fact) return ofFact(channel ? `${channel.tag}: ` : '', fact, unsaid.entry);
  return { headline: '', doNext: '' };
}

function ofThreshold(channel: ChannelResult, threshold: ThresholdResult, unsaid: EntryFacts): Sentences {
  const { entry, invalid = [] } = unsaid;
  const { tag, unit, inputs } = channel;
  const { name, multiplier, setpoint, verdict } = threshold;
  const step = inputs.resolution;
  const say = (value: number | null): string => `${level(value ?? NaN, step)}${unit ? ` ${unit}` : ''}`;
  const bare = (value: number | null): string => level(value ?? NaN, step);
  const times = multiplier === 1 ? '' : ` × ${multiplier} at start-up`;
  const whom = `${tag} ${name}${times}`;
  const acts = trips(name) ? 'trips' : 'alarms';
  const meant = setpoint === null ? '' : `set ${bare(multiplier * setpoint)}, `;
  if (entry.code === 'past-danger' || entry.code === 'past-alert')
    return {
      headline: `${tag} is past its ${name} now: panel ${bare(entry.panel)}, really ${say(entry.real)}; ${name} is meant at ${say(setpoint)}.`,
      doNext: trips(name)
        ? 'Tell the shift leader now, and decide by the site’s own procedure for danger.'
        : 'Treat it as an alert now. Find out why it runs this high.',
    };
  if (entry.code === 'beyond-limit')
    return {
      headline: `${whom} acts at ${say(entry.real)}, beyond the machine limit of ${say(entry.limit)}.`,
      doNext: 'Before start-up: the machinery engineer responsible must decide.',
    };
  if (entry.code === 'may-be-beyond-limit')
    return {
      headline: `${whom} may act beyond the machine limit of ${say(entry.limit)}: ${upperEnd(threshold, say)}.`,
      doNext: 'Measure the chain more accurately, or let the machinery engineer responsible decide.',
    };
  switch (verdict) {
    case 'unreachable':
      return {
        headline: `${whom} cannot act: ${why(threshold, say)}.`,
        doNext: `Before start-up: ${unreachableCure(threshold)}`,
      };
    case 'late':
      return {
        headline: `${whom} is late: ${meant}really ${acts} at ${say(entry.real)}${disagreement(threshold, say)}.`,
        doNext: `Correct the chain and measure again. ${meanwhile(threshold, say)}`,
      };
    case 'undetermined':
      return {
        headline:
          threshold.effective === null
            ? `${whom} is uncertain: ${why(threshold, say)}${disagreement(threshold, say)}.`
            : `${whom} is uncertain: ${meant}really ${acts} somewhere from ${bare(entry.low)} to ${entry.high === null ? 'an unknown level' : say(entry.high)}${disagreement(threshold, say)}.`,
        doNext: `${threshold.effective === null ? 'Measure the chain again' : 'Measure the chain more accurately'}. ${meanwhile(threshold, say)}`,
      };
    case 'early':
      return {
        headline: `${whom} is early: ${meant}really ${acts} at ${say(entry.real)}.`,
        doNext: `Correct the chain; until then expect false ${trips(name) ? 'trips' : 'alarms'}.`,
      };
    case 'incomplete':
    case 'within':
      return {
        headline: `${whom} is not known: ${obstaclesSaid(threshold.obstacles, invalid)}.`,
        doNext: `Do not rely on it. ${obstacleCure(threshold.obstacles)}, and audit again.`,
      };
  }
}

/** The line of evidence that puts it latest, and how late that may be. */
function upperEnd({ lines, setpoint }: ThresholdResult, say: (value: number | null) => string): string {
  const ends = lines.flatMap(({ by, low, high, effective }) => {
    if (effective === null) return [];
    // Without an uncertainty it acts just there.
    const end = low === null && high === null ? effective : (setpoint ?? 0) < 0 ? low : high;
    return [{ by, end, size: end === null ? Infinity : Math.abs(end) }];
  });
  const latest = ends.reduce((one, other) => (other.size > one.size ? other : one), ends[0] ?? noEnd);
  return latest.end === null
    ? `by the ${latest.by} it can't be shown to act before that`
    : `it acts at up to ${say(latest.end)} by the ${latest.by}`;
}

const noEnd = { by: 'listed sensitivity', end: null, size: Infinity } as const;

/** What operations do until the chain is corrected. */
function meanwhile({ panel, name }: ThresholdResult, say: (value: number | null) => string): string {
  return panel === null
    ? `Until then do not rely on the ${name}.`
    : `Until then treat ${say(panel)} on the panel as ${name}.`;
}

function why({ unreachable, lines }: ThresholdResult, say: (value: number | null) => string): string {
  if (unreachable.length > 0) return listed(unreachable.map((reason) => lineReasons[reason]));
  const reasons = lines.flatMap(({ why: reason }) => (reason === null ? [] : [lineReasons[reason]]));
  return reasons.length > 0
    ? listed([...new Set(reasons)])
    : `somewhere about ${say(lines[0]?.effective ?? null)}`;
}

function unreachableCure({ unreachable }: ThresholdResult): string {
  if (unreachable.includes('above full scale'))
    return 'bring the setpoint inside the full scale, under the site’s change procedure.';
  if (unreachable.includes('on the other side of zero')) return 'set the zero again.';
  if (unreachable.includes('outside the fault limits'))
    return 'correct the gap or the fault limits so that the trip comes first.';
  return 'set the gap to the middle of the linear range, or repair the chain.';
}

/** Where another line of evidence puts it, where it says otherwise. */
function disagreement({ lines, governedBy }: ThresholdResult, say: (value: number | null) => string): string {
  const governing = lines.find(({ by }) => by === governedBy);
  const others = lines.filter(({ by, verdict }) => by !== governedBy && verdict !== governing?.verdict);
  if (governing === undefined || others.length === 0) return '';
  const said = others.map(({ by, effective }) =>
    effective === null ? `not shown by the ${by}` : `${say(effective)} by the ${by}`,
  );
  return ` by the ${governing.by}, ${listed(said)}`;
}

function ofBypass({ tag, thresholds }: ChannelResult): Sentences {
  const danger = thresholds.some(({ name, setpoint }) => trips(name) && setpoint !== null);
  return {
    headline: `${tag} is in bypass: it ${danger ? 'trips' : 'alarms'} nothing.`,
    doNext: 'Before start-up: remove the bypass by the site’s own procedure.',
  };
}

/** A finding's message is a sentence that says it, and often a second that says what to do. */
function ofFact(subject: string, fact: PlacedFact, { code }: EntryFacts['entry']): Sentences {
  return {
    headline: `${subject}${messageOf(fact)}`,
    doNext:
      code === 'incomplete'
        ? 'Do not rely on it. Add its measured sensitivity, and audit again.'
        : `Check ${fact.sheet}, row ${fact.row}${fact.column === '' ? '' : `, column ${fact.column}`}.`,
  };
}

function ofNotRead({ what, text, looksLike, sheet, row, column, why }: NotRead): Sentences {
  const named = text === '' ? '' : ` '${text.slice(0, 60)}'`;
  const where = what === 'sheet' ? '' : ` of sheet '${sheet}'${what === 'row' ? '' : `, ${column}${row}`}`;
  const but = why === undefined ? '' : `, but ${leftAsideTexts[why]}`;
  return {
    headline: `${capital(what)}${named}${where} was not read; it looks like ${looksLike}${but}.`,
    doNext:
      why === 'no unit'
        ? 'Write its unit in brackets in the header, or mark it as not part of this audit.'
        : what === 'column' || what === 'value'
          ? 'Correct its header, or mark it as not part of this audit.'
          : what === 'row'
            ? 'Enter its tag, or mark it as not part of this audit.'
            : 'Say which table it belongs to, or mark it as not part of this audit.',
  };
}
