/**
 * Quantities that can turn a danger late or keep it from acting: where one of them may stand unread, the audit of a danger
 * can't be trusted.
 */
const protective: ReadonlySet<string> = new Set([
  'tag',
  'kind',
  'measured',
  'uncertainty',
  'coverage',
  'gapVoltage',
  'zeroMeasured',
  'zeroUncertainty',
  'loopAtZero',
  'loopAtZeroUncertainty',
  'loopAtSpan',
  'loopAtSpanUncertainty',
  'direction',
  'limit',
  'asLeftSensitivity',
  'asLeftGapVoltage',
  'asLeftUncertainty',
  'asLeftZero',
  'configured',
  'gain',
  'gainUncertainty',
  'alert',
  'danger',
  'fullScale',
  'multiplier',
  'zeroConfigured',
  'counterAlert',
  'counterDanger',
  'faultHigh',
  'faultLow',
  'detection',
  'group',
  'voting',
  'bypass',
]);

/** Whether a quantity, by its id in the vocabulary, bears on whether a danger acts as set. */
export function isProtective(id: string): boolean {
  return protective.has(id);
}
