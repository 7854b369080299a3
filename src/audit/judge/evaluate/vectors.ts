import { convert } from '../../../units/unit.ts';
import type { ShownVectors } from '../../model/channel.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { nameOfColumn } from '../../read/tables/vocabulary.ts';
import { level, type AmountContext } from './amounts.ts';

/**
 * The slow-roll vector of a channel and its component now; `null` where there is none, or with a warning where the runout's
 * amplitude is missing. A part that is missing leaves the component uncompensated, and is said.
 */
export function vectorsOf(context: AmountContext, row: ChannelRow): ShownVectors | null {
  const { runoutAmplitude, runoutPhase, runoutSensitivity, vectorAmplitude, vectorPhase } = row;
  const given = { runoutAmplitude, runoutPhase, vectorAmplitude, vectorPhase };
  const wanted = vectorAmplitude || vectorPhase ? Object.keys(given) : ['runoutAmplitude'];
  if (Object.values(given).every((one) => one === null)) return null;
  for (const column of wanted) {
    const absent = given[column as keyof typeof given] === null;
    if (absent && !context.diagnostics.isSaid(column))
      context.diagnostics.add(
        'channels',
        column,
        'vector-not-whole',
        { missing: nameOfColumn(column) },
        'nothing',
      );
  }
  const runout = level(context, 'channels', 'runoutAmplitude', runoutAmplitude);
  const amplitude = level(context, 'channels', 'vectorAmplitude', vectorAmplitude);
  if (runout === null) return null;
  const then = runoutSensitivity?.unit
    ? convert(runoutSensitivity.value, runoutSensitivity.unit, context.sensitivityUnit)
    : (runoutSensitivity?.value ?? null);
  const phase = runoutPhase?.value ?? null;
  const whole = amplitude !== null && vectorPhase !== null && phase !== null;
  return {
    runout,
    runoutPhase: phase,
    measuredThen: then !== null && Number.isFinite(then) ? then : null,
    now: whole ? { amplitude, phase: vectorPhase.value } : null,
  };
}
