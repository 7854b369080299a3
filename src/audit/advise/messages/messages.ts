import type { Fact, FactOf, Finding, PlacedFact } from '../../model/findings.ts';
import type { RuleId, JudgementRules, ReadingRules } from '../../model/rules/rules.ts';
import { leftMessages } from './asLeftThresholds.ts';
import { recordMessages, rawRecordMessages } from './calibrationRecords.ts';
import { driftMessages, historyMessages } from './history.ts';
import { replayMessages } from './replay.ts';
import { runUpMessages } from './runUp.ts';
import { settingsMessages } from './settings.ts';
import { thresholdMessages } from './thresholds.ts';
import type { GroupRules } from '../../model/rules/groupRules.ts';
import { timesAtStartUp } from '../../model/threshold.ts';
import { amount } from '../../model/wording.ts';
import type { MessagesOf } from './phrases.ts';
import { memberReasonText } from '../groupSentences.ts';
import { tableMessages, untidyMessages } from './tables.ts';
import { valueMessages, cellMessages } from './values.ts';
import type { UnitRules } from '../../model/rules/cellRules.ts';
import type { AsLeftReadingRules } from '../../model/rules/asLeftRules.ts';

/** What is said of the readings of a channel as it was left. */
const asLeftReadingMessages: MessagesOf<AsLeftReadingRules> = {
  'as-left-not-judged': ({ values }) => notJudged(values.why),
  'record-as-left-of-another-day': ({ values: { sheet, row, takenOn, lies } }) => {
    const why =
      lies.kind === 'after the audit'
        ? `lies after the day of this audit, ${lies.today}`
        : `lies before what was found on ${lies.found}, so it can’t be how that was left`;
    return `The record marked as left in row ${row} of sheet '${sheet}' is of ${takenOn}, which ${why}: it was not used as left. Check the dates.`;
  },
  'as-left-sensitivity-from-record': ({ values: { sheet, row, value, unit, takenOn } }) => {
    const day =
      takenOn === null
        ? '; it names no day: make sure that it was taken after what was found'
        : `; it was taken on ${takenOn}`;
    return `The channel list has no as-left sensitivity; the average of the calibration record marked as left in row ${row} of sheet '${sheet}', ${amount(value, unit)}, was used${day}.`;
  },
};

/** What is said of units and of how a size of vibration is counted. */
const unitMessages: MessagesOf<UnitRules> = {
  'unit-missing': ({ values: { what, example } }) =>
    `The unit of the ${what} is missing; write it in brackets in the header, such as (${example}), or in a unit column.`,
  'unit-does-not-fit': ({ values }) => doesNotFit(values),
  'detection-not-said': ({ values: { quantity, own, ofSetpoints } }) =>
    `The ${quantity} is ${detectionText(own)} and the setpoints are ${detectionText(ofSetpoints)}, so they were not compared. Say for both whether they are peak, peak to peak or rms.`,
  'unit-assumed': ({ values: { header, unit, row } }) =>
    `'${header}' has no unit; its numbers were taken in the unit of the setpoints (${unit} in row ${row}). Write the unit in brackets in the header.`,
  'units-mixed': ({ values: { units, rows } }) =>
    `This table has two units for one quantity: ${units.join(' and ')} (first in rows ${rows[0]} and ${rows[1]}). Each number was used in its own unit; make sure that each is right.`,
  'detection-contradicts-header': ({ values: { ofColumn, ofHeader, factor } }) =>
    `The detection column says ${ofColumn} and the header of the setpoints ${ofHeader}, a factor of ${Number(factor.toPrecision(3))} between them. The column was used. Correct one of them.`,
};

/** What is said of cells, rows, tables, records and histories. */
export const readingMessages: MessagesOf<ReadingRules> = {
  ...cellMessages,
  ...valueMessages,
  ...unitMessages,
  ...tableMessages,
  ...rawRecordMessages,
  ...historyMessages,
  ...asLeftReadingMessages,
  ...untidyMessages,
};

type Sentences = { readonly [K in keyof GroupRules]: (fact: FactOf<K>) => string };

/** What is said of voting groups. */
const groupMessages: Sentences = {
  'voting-not-understood': ({ values: { voting } }) =>
    `The voting '${voting.slice(0, 40)}' is not understood, so when its group acts is not known; write it like 1oo2 or 2oo3.`,
  'voting-missing': ({ values: { group } }) =>
    `The voting of group '${group}' is missing, so when the group acts is not known; enter it like 1oo2.`,
  'voting-contradicts': ({ values: { group, votings, used } }) =>
    `Group '${group}' is listed with different votings (${votings.join(', ')}). ${used} was used, since it acts last. Correct them.`,
  'group-missing': ({ values: { voting } }) =>
    `The voting is ${voting} but no voting group is named, so its other members are not known; enter the group.`,
  'group-size-differs': ({ values: { group, voting, needed, listed } }) =>
    `Group '${group}' votes ${voting} but ${listed} of the channels listed belong to it, not ${needed}. ${listed < needed ? 'Missing members were not counted. ' : ''}Check the group.`,
  'group-cannot-trip': ({ values }) => cannot('trip', values),
  'group-cannot-act': ({ values }) => cannot('act', values),
  'group-tripped': ({ values: { group, voting, threshold, multiplier, out } }) =>
    `Group '${group}' (${voting}) has tripped on ${threshold}${timesAtStartUp(multiplier)} already, or would at once: ${castBy(out)}. Check the policy of members out of service.`,
  'group-beyond-limit': ({ values }) =>
    `${where(values)}, beyond its limit of ${amount(values.limit, values.unit)}; ${by(values)}.`,
  'group-late': ({ values }) =>
    `${where(values)} instead of ${amount(values.intended, values.unit)}; ${by(values)}.`,
};

type Acts = GroupRules['group-beyond-limit' | 'group-late'];

/** What is said of channels, thresholds and voting groups. */
const judgementMessages: { readonly [K in keyof JudgementRules]: (fact: FactOf<K>) => string } = {
  ...thresholdMessages,
  ...settingsMessages,
  ...leftMessages,
  ...recordMessages,
  ...groupMessages,
  ...driftMessages,
  ...replayMessages,
  ...runUpMessages,
};

/** How each rule's finding is said. */
type Messages<R extends RuleId> = { readonly [K in R]: (fact: FactOf<K>) => string };

const messages: Messages<RuleId> = { ...readingMessages, ...judgementMessages };

/** The sentence of a finding, for people. */
export function messageOf(fact: Fact): string {
  const say = messages[fact.rule] as (fact: Fact) => string;
  return say(fact);
}

/** Name of a rule in a report, after the threshold that it is about: `danger-late`, `counter-danger-late`. */
export function reportedRule({ rule, threshold }: Pick<Fact, 'rule' | 'threshold'>): string {
  return threshold === null ? rule : `${threshold.replace(' ', '-')}-${rule}`;
}

/** Findings as a report shows them. */
export function finished(found: readonly PlacedFact[]): Finding[] {
  return found.map((one): Finding => {
    const { severity, threshold, multiplier, values, sheet, row, column } = one;
    return {
      rule: reportedRule(one),
      severity,
      threshold,
      multiplier,
      values: values as Finding['values'],
      message: messageOf(one),
      sheet,
      row,
      column,
    };
  });
}

function cannot(
  what: string,
  { group, voting, threshold, multiplier, idle }: GroupRules['group-cannot-act'],
): string {
  const why = idle
    .map((member) => `${member.tag} (${member.why === null ? 'cannot act' : memberReasonText(member.why)})`)
    .join(', ');
  const because =
    idle.length > 0 ? `these members can't act: ${why}` : 'fewer of its members are listed than have to vote';
  return `Group '${group}' (${voting}) cannot ${what} on ${threshold}${timesAtStartUp(multiplier)}: ${because}.`;
}

/** Whose votes are cast though they are out: `the votes of A (bypassed), B (faulty) count`. */
function castBy(out: GroupRules['group-tripped']['out']): string {
  const cast = out.filter(({ policy }) => policy === 'trip').map(({ tag, because }) => `${tag} (${because})`);
  return `the votes of ${cast.join(', ')} count as cast`;
}

function where({ group, voting, threshold, multiplier, effective, unit }: Acts): string {
  return `Group '${group}' (${voting}) acts on ${threshold}${timesAtStartUp(multiplier)} at ${amount(effective, unit)}`;
}

function by({ decidedBy }: Acts): string {
  return `decided by ${decidedBy.join(', ')}`;
}

function detectionText(detection: string | null): string {
  return detection ?? 'without a word on peak or rms';
}

function doesNotFit(values: UnitRules['unit-does-not-fit']): string {
  switch (values.kind) {
    case 'level':
      return `${values.value} ${values.unit} can't be compared with setpoints in ${values.setpointUnit}. Correct the unit.`;
    case 'sensitivities':
      return `The ${values.which.replace(' ', '-')} sensitivity is in ${values.unit} and the configured one in ${values.configuredUnit}; these can't be compared. Correct the unit.`;
    case 'detections':
      return `The measured sensitivity is ${detectionText(values.measured)} and the configured one ${detectionText(values.configured)}; these can't be compared. Say for both whether they are peak, peak to peak or rms.`;
    case 'setpoints':
      return `The setpoints are in ${values.unit} but the sensitivity is in ${values.sensitivityUnit}. Correct the unit.`;
    case 'channel kind':
      return `A ${values.channelKind} channel needs a sensitivity per unit of ${values.quantity}, not ${values.unit}. Correct the kind or the unit.`;
  }
}

function notJudged(why: AsLeftReadingRules['as-left-not-judged']['why']): string {
  switch (why) {
    case 'found unusable':
      return 'The as-left readings were not judged, because what was found can’t be audited. Complete the row first.';
    case 'value unusable':
      return unknownSince('a value among them can’t be used');
    case 'no sensitivity':
      return unknownSince('no sensitivity was read as left');
  }
}

function unknownSince(why: string): string {
  return `The as-left readings were not judged: ${why}, so where the thresholds act since the correction is not known. Enter the as-left sensitivity with its unit.`;
}
