/** Texts of the drawing of a calibration record. */
export const recordMessages = {
  heading: 'Calibration record',
  volts: 'Output, V',
  deviation: (unit: string) => `Deviation, ${unit}`,
  steps: (unit: string) => `Each step, mV/${unit}`,
  gap: (unit: string) => `gap, ${unit}`,
  measured: 'measured',
  rated: 'rated slope',
  fitted: 'off the fitted line',
  tolerance: 'tolerance',
  operating: 'gap in service',
  danger: 'swing at danger',
  linear: 'linear range',
  table: 'The points as a table',
  columns: (unit: string) => [`Gap, ${unit}`, 'Output, V', `Step, mV/${unit}`, `Deviation, ${unit}`] as const,
  none: '–',
} as const;
