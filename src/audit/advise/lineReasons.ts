import type { LineReason } from '../model/threshold.ts';

/** Why a line of evidence gives no threshold, for people. */
export const lineReasons: Readonly<Record<LineReason, string>> = {
  'above full scale': 'it is set above full scale',
  'out of the linear reach': 'it lies beyond the linear range of the chain',
  'on the other side of zero': 'the zero has moved so far that it acts on the other side',
  'outside the fault limits': 'the monitor marks the channel faulty before it gets there',
  'the record does not reach that far': 'its calibration record does not reach that far',
  'the gap voltage lies outside the record': 'its gap voltage lies outside the calibration record',
  'the measured zero lies outside the record':
    'its measured zero voltage lies outside the calibration record',
  'its uncertainty is 100 % or more': 'the uncertainty is 100 % or more',
};
