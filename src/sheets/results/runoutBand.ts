import type { RunoutResult, RunoutThreshold } from '../../audit/model/report.ts';
import { level, type Band, type Column } from './column.ts';
import type { Line } from './line.ts';

const of = (value: (runout: RunoutResult) => number | null): Column['value'] => {
  return ({ channel }) => (channel.runout ? value(channel.runout) : null);
};

/** What runout means at the line's own threshold. */
function at({ channel, threshold }: Line): RunoutThreshold | undefined {
  return channel.runout?.thresholds.find(
    ({ name, multiplier }) => name === threshold.name && multiplier === threshold.multiplier,
  );
}

function hasRunout({ channel }: Line): boolean {
  return channel.runout !== null;
}

function hasSpan(line: Line): boolean {
  return (at(line)?.most ?? null) !== null;
}

/** The slow-roll vector, the component without it, and how far the shaft really moves where the threshold acts. */
export const runoutBand: Band = {
  caption: 'Runout of 1X; not for overall values',
  columns: [
    { id: 'runout', header: 'Runout as shown', width: 9, style: level, value: of(({ shown }) => shown) },
    { id: 'runoutPhase', header: 'its phase, °', width: 9, style: 'factor', value: of(({ phase }) => phase) },
    {
      id: 'runoutSensitivity',
      header: 'Sensitivity then',
      width: 11,
      style: 'factor',
      value: of(({ measuredThen }) => measuredThen),
    },
    {
      id: 'vectorAmplitude',
      header: '1X as shown',
      width: 9,
      style: level,
      value: of(({ now }) => now?.amplitude ?? null),
    },
    {
      id: 'vectorPhase',
      header: '1X phase, °',
      width: 9,
      style: 'factor',
      value: of(({ now }) => now?.phase ?? null),
    },
    {
      id: 'runoutReal',
      header: 'Runout, real',
      width: 9,
      style: level,
      value: of(({ real }) => real),
      formula: 'runoutReal',
      applies: hasRunout,
    },
    {
      id: 'compensated',
      header: '1X really, without runout',
      width: 10,
      style: level,
      value: of(({ compensated }) => compensated?.amplitude ?? null),
    },
    {
      id: 'compensatedPhase',
      header: 'at phase, °',
      width: 9,
      style: 'level1',
      value: of(({ compensated }) => compensated?.phase ?? null),
    },
    {
      id: 'movesFrom',
      header: 'Where it acts, shaft really moves from',
      width: 12,
      style: level,
      value: (line) => at(line)?.least ?? null,
      formula: 'movesFrom',
      applies: hasSpan,
    },
    {
      id: 'movesTo',
      header: 'to',
      width: 9,
      style: level,
      value: (line) => at(line)?.most ?? null,
      formula: 'movesTo',
      applies: hasSpan,
    },
    {
      id: 'movesNow',
      header: 'at the present angle',
      width: 10,
      style: level,
      value: (line) => at(line)?.real ?? null,
    },
  ],
};
