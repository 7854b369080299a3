import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Attention, ChannelResult } from '../../audit/model/report.ts';
import type { LineAction } from './line.ts';

/** What something is about, as findings and what needs action name it. */
interface About {
  readonly threshold: ThresholdResult['name'] | null;
  readonly multiplier: number | null;
}

/** What needs action, by the row of the channel list that it is about. */
export type ActionsByRow = ReadonlyMap<string, readonly Attention[]>;

export function actionsByRow(attention: readonly Attention[]): ActionsByRow {
  const found = new Map<string, Attention[]>();
  for (const one of attention) {
    if (one.subject.tag === '') continue;
    for (const { sheet, row } of one.places) {
      const key = rowKey(sheet, row);
      const there = found.get(key);
      if (there) there.push(one);
      else found.set(key, [one]);
    }
  }
  return found;
}

/** What needs action of a threshold: what is about the channel as a whole stands with its danger. */
export function actionOf(
  actions: ActionsByRow,
  channel: ChannelResult,
  threshold: ThresholdResult,
): LineAction {
  const { sheet, row } = channel.source.channels;
  const first = isFirst(channel, threshold);
  const own = (actions.get(rowKey(sheet, row)) ?? []).filter(
    ({ subject }) =>
      subject.tag === channel.tag && (subject.threshold === null ? first : isAbout(subject, threshold)),
  );
  return {
    headlines: own.map(({ headline }) => headline).join(' '),
    doNext: [...new Set(own.map(({ doNext }) => doNext))].join(' '),
  };
}

/** The line with which stands what is about the channel as a whole: its plain danger, or the first where it has none. */
function isFirst({ thresholds }: ChannelResult, threshold: ThresholdResult): boolean {
  const danger = thresholds.find(({ name, multiplier }) => name === 'danger' && multiplier === 1);
  return threshold === (danger ?? thresholds[0]);
}

function isAbout({ threshold, multiplier }: About, { name, multiplier: own }: ThresholdResult): boolean {
  return threshold === name && (multiplier ?? 1) === own;
}

function rowKey(sheet: string, row: number): string {
  return `${sheet}\n${row}`;
}
