import { level } from '../../audit/model/wording.ts';
import type { Attention } from '../../audit/model/report.ts';
import { actsFirst, type ThresholdResult } from '../../audit/model/threshold.ts';
import { wide, type Entry, type SpanningCell } from '../style/layout.ts';
import type { ChannelRow } from './channelRows.ts';
import { withoutRepeatedAlerts } from './withoutRepeatedAlerts.ts';
import type { PanelStyles, Shown, Weight } from './panelStyles.ts';
import { type PageLine, clipped } from './paper.ts';
import { shadeOf, signOf, verdictSigns } from './signs.ts';

/** Columns that each part of the table takes, of the page's narrow ones. */
const spans = {
  channel: 6,
  where: 6,
  alert: 5,
  danger: 6,
  now: 5,
  set: 3,
  trips: 5,
  limit: 3,
  sign: 5,
} as const;

/** Where on the annex the numbers of a threshold stand, from which the page takes them. */
interface AnnexCells {
  /** A formula's number for one of its cells; `undefined` where the annex has no line for it. */
  formulaOf(threshold: ThresholdResult, column: 'set' | 'acts' | 'panel'): number | undefined;
}

/** What the table is made with: styles of numbers, cells of the annex, and the width of a narrow column in characters. */
export interface TableTools {
  readonly numbers: PanelStyles;
  readonly annex: AnnexCells;
  readonly widthOf: (span: number) => number;
}

export const faultHeaders: PageLine = {
  entries: [
    wide('Channel', 'labelLeft', spans.channel),
    wide('Where', 'labelLeft', spans.where),
    wide('Treat as ALERT at panel reading', 'labelCentred', spans.alert),
    wide('Treat as DANGER at panel reading', 'labelStrong', spans.danger),
    wide('Panel shows now', 'labelCentred', spans.now),
    wide('Set at', 'labelCentred', spans.set),
    wide('Really trips at', 'labelCentred', spans.trips),
    wide('Machine limit', 'labelCentred', spans.limit),
    wide(null, 'labelCentred', spans.sign),
  ],
};

/** Makes the cell of a number over `span` columns, with its formula where it has one. */
function numbersBy({ numbers, widthOf }: TableTools) {
  return (value: number, shown: Shown, weight: Weight, span: number, formula?: number): SpanningCell => ({
    value,
    style: numbers.styleOf(value, shown, weight, widthOf(span)),
    span,
    ...(formula === undefined ? {} : { formula }),
  });
}

/** A row of the table: the panel readings to treat as alert and danger, and how the channel really stands. */
export function faultLine(row: ChannelRow, tools: TableTools): PageLine {
  const { channel, alert, danger, entries } = row;
  const shown = { resolution: channel.inputs.resolution, unit: channel.unit };
  const bare = { ...shown, unit: null };
  const number = numbersBy(tools);
  const treatAs = (threshold: ThresholdResult | null, weight: Weight, span: number): Entry => {
    const panel = panelOf(threshold);
    if (threshold === null || panel === null)
      return wide(nonePanel(threshold, weight), weight === 'danger' ? 'shownStrong' : 'shown', span);
    if (actsFirst(threshold)) return wide('as set', weight === 'danger' ? 'shownStrong' : 'shown', span);
    return number(panel, shown, weight, span, tools.annex.formulaOf(threshold, 'panel'));
  };
  const set = danger === null || danger.setpoint === null ? null : danger.multiplier * danger.setpoint;
  const { limit, reading } = channel.inputs;
  const past = entries.find(({ code }) => code === 'past-danger' || code === 'past-alert');
  const [gravest] = entries.filter((entry) => entry !== past);
  const code = (past?.code === 'past-danger' ? past : (gravest ?? past))?.code;
  return {
    entries: [
      wide(clipped(channel.tag, 24), 'channel', spans.channel),
      wide(whereOf(row), 'where', spans.where),
      treatAs(alert, 'alert', spans.alert),
      treatAs(danger, 'danger', spans.danger),
      past
        ? wide(pastWords(past, channel.inputs.resolution), 'pastLevel', spans.now)
        : reading === null
          ? wide('–', 'shown', spans.now)
          : number(reading, bare, 'plain', spans.now),
      danger === null || set === null
        ? wide('–', 'shown', spans.set)
        : number(set, bare, 'plain', spans.set, tools.annex.formulaOf(danger, 'set')),
      tripsAt(row, (value, formula) => number(value, bare, 'plain', spans.trips, formula), tools.annex),
      limit === null ? wide('–', 'shown', spans.limit) : number(limit, bare, 'plain', spans.limit),
      wide(signsOf(entries), code ? shadeOf(code) : 'within', spans.sign),
    ],
  };
}

/** A row for settings whose channel is not listed: what they are set to is all that is known. */
export function unlistedLine({ subject, set }: Attention, tools: TableTools): PageLine {
  const none = (span: number): Entry => wide('–', 'shown', span);
  return {
    entries: [
      wide(clipped(subject.tag, 24), 'channel', spans.channel),
      wide('not in the channel list', 'where', spans.where),
      none(spans.alert),
      wide('none: not known', 'shownStrong', spans.danger),
      none(spans.now),
      set === null
        ? none(spans.set)
        : numbersBy(tools)(set, { resolution: null, unit: null }, 'plain', spans.set),
      none(spans.trips),
      none(spans.limit),
      wide(verdictSigns.incomplete, 'incomplete', spans.sign),
    ],
  };
}

/** The panel reading to treat as a threshold; `null` where none can be relied on. */
function panelOf(threshold: ThresholdResult | null): number | null {
  return threshold === null || threshold.verdict === 'incomplete' ? null : threshold.panel;
}

function nonePanel(threshold: ThresholdResult | null, weight: Weight): string {
  if (weight === 'alert' && (threshold === null || threshold.setpoint === null)) return '–';
  return threshold === null || threshold.verdict === 'incomplete' ? 'none: not known' : 'none';
}

function whereOf({ channel, counter, multiplier }: ChannelRow): string {
  return [
    counter ? 'counter direction' : '',
    multiplier === 1 ? '' : `at start-up × ${multiplier}`,
    clipped(channel.location, 40),
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function pastWords({ code, panel, real }: Attention, resolution: number | null): string {
  const say = (value: number | null): string => level(value ?? NaN, resolution);
  return `${say(panel)}: past ${code === 'past-danger' ? 'DANGER' : 'ALERT'}, really ${say(real)}`;
}

function tripsAt(
  { channel, danger }: ChannelRow,
  number: (value: number, formula?: number) => Entry,
  annex: AnnexCells,
): Entry {
  const words = (text: string): Entry => wide(text, 'shown', spans.trips);
  if (channel.inBypass === true) return words('in bypass');
  if (danger === null || danger.verdict === 'incomplete') return words('–');
  if (danger.verdict === 'unreachable') return words('cannot trip');
  const { low, high, effective, verdict } = danger;
  if (verdict === 'undetermined' && low !== null && high !== null) {
    const [from, to] = [low, high].map((end) => level(end, channel.inputs.resolution));
    return words(`${from}–${to}`);
  }
  return effective === null ? words('not shown') : number(effective, annex.formulaOf(danger, 'acts'));
}

/** The gravest sign, readings aside, and whether the limit is concerned too. */
function signsOf(entries: readonly Attention[]): string {
  const faults = withoutRepeatedAlerts(entries).filter(
    ({ code }) => code !== 'past-alert' && code !== 'past-danger',
  );
  const [gravest] = faults.length > 0 ? faults : entries;
  if (!gravest) return verdictSigns.within;
  const limit = faults.find(
    (entry) => entry !== gravest && (entry.code === 'beyond-limit' || entry.code === 'may-be-beyond-limit'),
  );
  return limit ? `${signOf(gravest)}, ${signOf(limit).split(' ').slice(1).join(' ')}` : signOf(gravest);
}
