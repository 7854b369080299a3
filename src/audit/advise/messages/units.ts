import type { UnitRules } from '../../model/rules/unitRules.ts';
import type { Sayings } from './sayings.ts';

/** What is said of units and of how a size of vibration is counted. */
export const unitMessages: Sayings<UnitRules> = {
  'unit-missing': ({ values: { what, example } }) =>
    `The unit of the ${what} is missing; write it in brackets in the header, such as (${example}), or in a unit column.`,
  'unit-does-not-fit': ({ values }) => doesNotFit(values),
  'detection-not-said': ({ values: { quantity, own, ofSetpoints } }) =>
    `The ${quantity} is ${detectionText(own)} and the setpoints are ${detectionText(ofSetpoints)}, so they were not compared. Say for both whether they are peak, peak to peak or rms.`,
  'unit-assumed': ({ values: { header, unit, row } }) =>
    `'${header}' has no unit; its numbers were taken in the unit of the setpoints (${unit} in row ${row}). Write the unit in brackets in the header.`,
  'units-mixed': ({ values: { units, rows } }) =>
    `Two units of one quantity stand in this table: ${units.join(' and ')} (first in rows ${rows[0]} and ${rows[1]}). Each number was used in its own unit; make sure that each is right.`,
  'detection-contradicts-header': ({ values: { ofColumn, ofHeader, factor } }) =>
    `The detection column says ${ofColumn} and the header of the setpoints ${ofHeader}, a factor of ${Number(factor.toPrecision(3))} between them. The column was used. Correct one of them.`,
};

function detectionText(detection: string | null): string {
  return detection ?? 'without a word on peak or rms';
}

function doesNotFit(values: UnitRules['unit-does-not-fit']): string {
  switch (values.kind) {
    case 'level':
      return `${values.value} ${values.unit} can't be compared with setpoints in ${values.setpointUnit}. Correct the unit.`;
    case 'sensitivities':
      return `The ${values.which.replace(' ', '-')} sensitivity is in ${values.unit} and the configured one in ${values.configuredUnit}; these can't be compared. Correct the unit.`;
    case 'detections':
      return `The measured sensitivity is ${detectionText(values.measured)} and the configured one ${detectionText(values.configured)}; these can't be compared. Say for both whether they are peak, peak to peak or rms.`;
    case 'setpoints':
      return `The setpoints are in ${values.unit} but the sensitivity is in ${values.sensitivityUnit}. Correct the unit.`;
    case 'channel kind':
      return `A ${values.channelKind} channel needs a sensitivity per unit of ${values.quantity}, not ${values.unit}. Correct the kind or the unit.`;
  }
}
