import { defaultPolicy } from '../../audit/model/policy.ts';
import { amount, capital, percent, rounded, verdictWords } from '../../audit/model/wording.ts';
import { notANumber } from '../../audit/advise/messages/phrases.ts';
import { readNumber } from '../../cells/number.ts';
import { band } from '../../method/decision/band.ts';
import { decide, type Verdict } from '../../method/decision/verdict.ts';
import { effectiveThreshold, shift, shiftFraction } from '../../method/vibration/threshold.ts';
import { indicated } from '../../method/vibration/panelReading.ts';
import type { QuickField, QuickState } from './quickState.ts';
import { quickMessages } from './quickMessages.ts';

export interface QuickValues {
  readonly setpoint: number;
  readonly configured: number;
  readonly measured: number;
  /** Expanded, as a fraction of the measured sensitivity. */
  readonly uncertainty: number | null;
}

/** Where a setpoint acts, in the unit of the setpoint. */
export interface QuickAnswer {
  readonly values: QuickValues;
  readonly effective: number;
  readonly shift: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly verdict: Verdict;
  readonly sentence: string;
  readonly details: readonly string[];
}

export interface QuickReading {
  readonly faults: Readonly<Partial<Record<QuickField, string>>>;
  /** `null` until every field that is needed is filled and right. */
  readonly answer: QuickAnswer | null;
}

/** What the fields say, or what is wrong with each. An empty field is no fault, only nothing yet. */
export function readQuick(state: QuickState): QuickReading {
  const faults: Partial<Record<QuickField, string>> = {};
  const numberIn = (field: QuickField): number | null => {
    const text = state.texts[field].trim();
    if (text === '') return null;
    const read = readNumber(text, undefined);
    if ('why' in read) {
      faults[field] = quickMessages.notNumber(notANumber[read.why]);
      return null;
    }
    if (field === 'uncertainty') {
      if (read.value >= 0 && read.value < 100) return read.value / 100;
      faults[field] = quickMessages.uncertaintyRange;
      return null;
    }
    if (read.value > 0 && !read.percent) return read.value;
    faults[field] = quickMessages.notAbove(quickMessages[field]);
    return null;
  };
  const setpoint = numberIn('setpoint');
  const configured = numberIn('configured');
  const measured = numberIn('measured');
  const uncertainty = numberIn('uncertainty');
  const usable = Object.keys(faults).length === 0;
  if (!usable || setpoint === null || configured === null || measured === null)
    return { faults, answer: null };
  return { faults, answer: answerOf({ setpoint, configured, measured, uncertainty }, state) };
}

function answerOf(values: QuickValues, state: QuickState): QuickAnswer {
  const { setpoint, configured, measured, uncertainty } = values;
  const effective = effectiveThreshold(setpoint, configured, measured, 1);
  const later = shift(setpoint, configured, measured, 1);
  const span = uncertainty === null ? null : band(setpoint, configured, measured, uncertainty, 1);
  const { tolerance, rule } = defaultPolicy;
  const verdict = decide(configured, measured, tolerance, uncertainty, rule);
  const level = (value: number): string => amount(value, state.unit);
  const typed = state.texts.setpoint.trim();
  const meant = `${capital(state.kind)} ${typed.length <= 8 ? typed : rounded(setpoint)} ${state.unit}`;
  const by = `${level(Math.abs(later))} (${percent(Math.abs(shiftFraction(configured, measured)))})`;
  const side = later > 0 ? `: ${by} late` : later < 0 ? `: ${by} early` : ', as intended';
  return {
    values,
    effective,
    shift: later,
    low: span?.low ?? null,
    high: span?.high ?? null,
    verdict,
    sentence: `${meant} really ${state.kind === 'danger' ? 'trips' : 'alarms'} at ${level(effective)}${side}.`,
    details: [
      `When the shaft really moves ${level(setpoint)}, the monitor shows ${level(indicated(setpoint, configured, measured))}.`,
      ...(span && uncertainty !== null
        ? [
            `With ±${percent(uncertainty)} uncertainty it really acts somewhere from ${level(span.low)} to ${level(span.high)}.`,
          ]
        : []),
      `Verdict at the usual tolerance of ±${percent(tolerance)} on sensitivity: ${verdictWords[verdict]}.`,
    ],
  };
}
