import type { Distribution } from '../../../method/uncertainty.ts';

/** Parts that the uncertainty of a measured sensitivity usually has, each with the usual shape; common practice, no source. */
export const budgetParts: readonly { readonly name: string; readonly distribution: Distribution }[] = [
  { name: 'Reference displacement: micrometer or shaker, from its certificate', distribution: 'normal' },
  { name: 'Voltmeter: its accuracy at these voltages', distribution: 'rectangular' },
  {
    name: 'Repeatability: standard deviation of the mean of repeated calibrations',
    distribution: 'standard',
  },
  { name: 'Temperature: between calibration and service', distribution: 'rectangular' },
  { name: 'Resolution: half a step of what was read', distribution: 'rectangular' },
];
