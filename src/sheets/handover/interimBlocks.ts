import type { ChannelResult } from '../../audit/model/report.ts';
import { trips, type ThresholdResult } from '../../audit/model/threshold.ts';
import { cell } from '../cells.ts';
import { wide } from '../style/layout.ts';
import { givenStyle, levelDecimals } from '../style/significant.ts';
import { heading, table, text, type Block } from './annexPages.ts';
import { inOrder, type Place } from './numberLines.ts';
import { type PageLine, clipped } from './paper.ts';

const conditions =
  'The cure is to correct the chain. A changed setpoint is only for the meantime: it needs the site’s management of change, ' +
  'people authorised for it, and it is taken back when the chain is corrected.';

/** Setpoints that would restore what was meant until the chain is corrected, none without its conditions. */
export function interimBlocks(channels: readonly ChannelResult[], place: Place): Block[] {
  const lines = channels.flatMap((channel) =>
    inOrder(channel.thresholds)
      .filter(({ verdict, multiplier }) => verdict === 'late' && multiplier === 1)
      .map((threshold) => interimLine(channel, threshold, place)),
  );
  return table([...heading('Interim setpoints, on conditions'), ...text(conditions)], headers, lines);
}

const headers: PageLine = {
  height: 28,
  entries: [
    cell('Channel', 'labelLeft'),
    cell('Setting', 'labelLeft'),
    cell('Set now', 'label'),
    cell('Interim setpoint', 'label'),
    cell('Rounded to steps of', 'label'),
    cell('Panel shows now', 'label'),
    cell('Room above that', 'label'),
    cell('Unit', 'labelCentred'),
    wide('Mind', 'labelLeft', 4),
  ],
};

/** C set now, D interim setpoint, F what the panel shows; counted away from zero on the setpoint's own side. */
const room = 'SIGN(C{r})*(D{r}-F{r})';

function interimLine(channel: ChannelResult, threshold: ThresholdResult, place: Place): PageLine {
  const { tag, unit, inputs } = channel;
  const { name, setpoint, interimSetpoint } = threshold;
  const { resolution, reading } = inputs;
  const given = (value: number | null) => cell(value, givenStyle(value));
  const above =
    interimSetpoint === null || reading === null || setpoint === null
      ? null
      : Math.sign(setpoint) * (interimSetpoint - reading);
  return {
    entries: [
      { value: clipped(tag, 60), style: 'name' },
      { value: name, style: 'wrapped' },
      given(setpoint),
      given(interimSetpoint) ?? cell('none', 'word'),
      given(resolution) ?? cell('–', 'dash'),
      given(reading) ?? cell('–', 'dash'),
      above === null
        ? cell('–', 'dash')
        : { value: above, style: `signed${levelDecimals(setpoint, resolution)}`, formula: place(room) },
      cell(unit, 'centred'),
      wide(mind(channel, threshold, above), above !== null && above <= 0 ? 'warned' : 'wrapped', 4),
    ],
  };
}

function mind(
  { inputs }: ChannelResult,
  { name, interimSetpoint }: ThresholdResult,
  above: number | null,
): string {
  if (interimSetpoint === null) return 'None can be offered: correct the chain.';
  const acts = trips(name) ? 'trips' : 'alarms';
  return [
    above === null
      ? 'No present reading: read the panel before anything is entered.'
      : above <= 0
        ? `At or below what the panel shows now: ${acts} on entry.`
        : '',
    inputs.resolution === null ? 'Round it to the monitor’s step, to the early side.' : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}
