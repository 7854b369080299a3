import type { BookTruth, ChannelTruth } from '../truth.ts';
import { verdictOf } from '../truth.ts';

/** A threshold as reports write it. */
interface WrittenThreshold {
  name: string;
  multiplier: number;
  setpoint: number | null;
  effective: number | null;
  verdict: string;
}

interface WrittenState {
  sensitivity: { configured: number | null; measured: number | null; unit: string };
  thresholds: WrittenThreshold[];
}

interface WrittenChannel extends WrittenState {
  tag: string;
  machine: string;
  kind: string | null;
  unit: string;
  detection: string;
  asFound: WrittenState | null;
  inputs: Record<string, number | string | boolean | null>;
  findings: { rule: string; sheet: string; row: number; column: string }[];
}

export interface WrittenReport {
  channels: WrittenChannel[];
  attention: { severity: string; subject: { tag: string; threshold: string } }[];
  notRead: { what: string; sheet: string; row: number; column: string; text: string }[];
  columns: { sheet: string; row: number; column: string; meaning: string }[];
}

/** The report of a reader that understood everything, in schema 2: what the judge has to call right. */
export function perfect(truth: BookTruth): WrittenReport {
  return {
    channels: truth.channels.map(perfectChannel),
    attention: truth.channels
      .filter(({ verdict, asLeft }) => verdict === 'late' && asLeft === null)
      .map(({ tag }) => ({ severity: 'critical', subject: { tag: tag.join(' '), threshold: 'danger' } })),
    notRead: [],
    columns: truth.fields.map(({ meaning, sheet, row = 1, column = 'A' }) => ({
      meaning,
      sheet,
      row,
      column,
    })),
  };
}

function perfectChannel(channel: ChannelTruth): WrittenChannel {
  const { tag, machine, kind, asLeft, optional, measured } = channel;
  const found = stateOf(channel, measured, channel.verdict);
  const { configured } = channel;
  const left =
    asLeft === null
      ? null
      : stateOf(
          channel,
          asLeft,
          channel.asLeftVerdict ??
            (configured === null || channel.danger === null ? 'incomplete' : verdictOf(configured, asLeft)),
        );
  const [place] = channel.places;
  return {
    ...(left ?? found),
    tag: tag.join(' '),
    machine: machine ?? '',
    kind: kind ?? null,
    unit: 'mil',
    detection: 'p-p',
    asFound: left ? found : null,
    inputs: {
      fullScale: null,
      limit: null,
      gapVoltage: null,
      group: null,
      voting: null,
      bypass: null,
      ...optional,
    },
    findings:
      channel.verdict === 'incomplete'
        ? [{ rule: 'x', sheet: place?.sheet ?? '', row: place?.row ?? 1, column: place?.column ?? 'A' }]
        : [],
  };
}

function stateOf(
  { configured, alert, danger }: ChannelTruth,
  measured: number | null,
  verdict: string,
): WrittenState {
  const acts = (setpoint: number | null): number | null =>
    setpoint === null || configured === null || measured === null ? null : (setpoint * configured) / measured;
  return {
    sensitivity: { configured, measured, unit: 'mV/mil' },
    thresholds: [
      { name: 'alert', multiplier: 1, setpoint: alert, effective: acts(alert), verdict },
      { name: 'danger', multiplier: 1, setpoint: danger, effective: acts(danger), verdict },
    ],
  };
}
