/** The caution that stands in every report, on every sheet and screen. */
export const caution =
  'Advisory only. Correct the measuring chain first. Setpoints are changed only under the management of change of the site, by ' +
  'authorised people and under local codes. Never bypass or disarm protection on the word of this report. A gap voltage in its ' +
  'band never clears a channel. Check every input against the instrument itself before acting on it.';
