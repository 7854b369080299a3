import type { UnitSlip } from '../../model/rules/settingsRules.ts';
import { amount, rounded } from '../../model/wording.ts';

const peerSlips = {
  2: 'one may be peak-to-peak and the other zero-to-peak',
  25.4: 'one may be in µm and the other in mil',
} as const;

const ratedSlips = {
  25.4: 'it may be per µm where per mil is meant, or the other way',
  1000: 'it may be in V where mV is meant, or the other way',
} as const;

/** What looks like a slip of units, and which one, as a sentence without its end. */
export function unitSlipMessage(slip: UnitSlip): string {
  switch (slip.kind) {
    case 'sensitivities':
      return `The measured and the configured sensitivity differ by a factor of ${rounded(slip.ratio)}, about the 25.4 µm of a mil`;
    case 'detection of a sensitivity':
      return `The measured sensitivity of ${amount(slip.measured, slip.unit)} is ${rounded(slip.ratio)} times the configured ${amount(slip.configured, slip.unit)}: one may be peak-to-peak and the other zero-to-peak`;
    case 'rated sensitivity':
      return `The ${slip.which} sensitivity of ${amount(slip.value, slip.unit)} is about ${slip.factor} times off the rated ${amount(slip.rated, slip.unit)}: ${ratedSlips[slip.factor]}`;
    case 'setpoint':
      return `Danger ${amount(slip.danger, slip.unit)} ${against(slip)}: one may be in µm and the other in mil`;
    case 'size of a setpoint': {
      const other = slip.is === 'too small' ? 'mil written into a µm column' : 'µm written into a mil column';
      return `Danger ${amount(slip.danger, slip.unit)} is out of the ordinary for shaft vibration: it may be ${other}`;
    }
    case 'speed':
      return `A speed of ${amount(slip.speed, 'r/min')} is very slow for a shaft with displacement probes: it may be in thousands, or per second`;
    case 'uncertainty':
      return `An uncertainty of ${rounded(100 * slip.uncertainty)} % is smaller than a field calibration can reach: it may be a fraction where percent is meant`;
    case 'peers':
      return (
        `Danger ${amount(slip.own.danger, slip.own.unit)} of ${slip.own.tag} and ${amount(slip.other.danger, slip.other.unit)} of ${slip.other.tag} in group '${slip.group}' differ by a factor of ${slip.factor}: ` +
        peerSlips[slip.factor]
      );
  }
}

function against(slip: Extract<UnitSlip, { kind: 'setpoint' }>): string {
  const level = amount(slip.level, slip.unit);
  return slip.against === 'alert'
    ? `is ${rounded(slip.ratio)} times the alert of ${level}`
    : `against the ${slip.against} of ${level} is off by a factor of ${rounded(slip.ratio)}`;
}
