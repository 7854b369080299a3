import type { Channel } from '../../model/channel.ts';
import { amount, rounded } from '../../model/wording.ts';
import { ratedSensitivity } from './settingsRules.ts';
import type { Rule, Say, Statement } from './rule.ts';

const milToMicrometre = 25.4;
const voltToMillivolt = 1000;

/** Whether a ratio is a factor (or one over it) to within a part of it: the factor that explains it, else `undefined`. */
function explains(ratio: number, factor: number, within: number): boolean {
  return Math.abs(Math.abs(Math.log(ratio)) - Math.log(factor)) < Math.log1p(within);
}

/**
 * Values that are wrong by just the factor between two units: mil and µm (25.4), V and mV (1000), peak-to-peak and
 * zero-to-peak (2). A suspicion with its reason; the numbers are used as they stand.
 */
export const unitSlip: Rule = ({ channel, policy }, say) => {
  const { configured, measured, sensitivityUnit } = channel;
  const rated = ratedSensitivity(channel, policy);
  const unit = sensitivityUnit.text;
  if (rated !== null) {
    sensitivitySlip('measured', measured, rated, unit, say);
    sensitivitySlip('configured', configured, rated, unit, say);
  } else if (explains(measured / configured, milToMicrometre, 0.25)) {
    say(
      slip(
        'channels',
        'measured',
        `The measured and the configured sensitivity differ by a factor of ${rounded(measured / configured)}, about the 25.4 µm of a mil`,
      ),
    );
  }
  if (explains(measured / configured, 2, 0.03)) {
    say(
      slip(
        'channels',
        'measured',
        `The measured sensitivity of ${amount(measured, unit)} is ${rounded(measured / configured)} times the configured ${amount(configured, unit)}: one may be peak-to-peak and the other zero-to-peak`,
      ),
    );
  }
  setpointSlip(channel, say);
  uncertaintySlip(channel, say);
  speedSlip(channel, say);
};

function sensitivitySlip(
  id: 'measured' | 'configured',
  value: number,
  rated: number,
  unit: string,
  say: Say,
): void {
  const table = id === 'measured' ? 'channels' : 'settings';
  const what = `The ${id} sensitivity of ${amount(value, unit)}`;
  if (explains(value / rated, milToMicrometre, 0.25)) {
    say(
      slip(
        table,
        id,
        `${what} is the rated ${amount(rated, unit)} off by a factor of about 25.4: it may be per µm where per mil is meant, or the other way`,
      ),
    );
  } else if (explains(value / rated, voltToMillivolt, 0.25)) {
    say(
      slip(
        table,
        id,
        `${what} is the rated ${amount(rated, unit)} off by a factor of about 1000: it may be in V where mV is meant, or the other way`,
      ),
    );
  }
}

function setpointSlip({ alert, danger, fullScale, limit, unit, kind }: Channel, say: Say): void {
  if (unit.dimension !== 'displacement') return;
  if (alert !== null && danger !== null && explains(danger / alert, milToMicrometre, 0.5)) {
    say(
      slip(
        'settings',
        'danger',
        `Danger ${amount(danger, unit.text)} is ${rounded(danger / alert)} times the alert of ${amount(alert, unit.text)}: one may be in µm and the other in mil`,
      ),
    );
  }
  const against = [
    ['full scale', fullScale],
    ['limit', limit],
  ] as const;
  for (const [name, value] of against) {
    if (danger === null || value === null || !explains(danger / value, milToMicrometre, 1)) continue;
    say(
      slip(
        'settings',
        'danger',
        `Danger ${amount(danger, unit.text)} against the ${name} of ${amount(value, unit.text)} is off by a factor of ${rounded(danger / value)}: one may be in µm and the other in mil`,
      ),
    );
    return;
  }
  const micrometres = danger === null ? NaN : danger * unit.factor;
  if (kind === 'radial' && danger !== null && (micrometres < leastDanger || micrometres > greatestDanger)) {
    const other = micrometres < leastDanger ? 'mil written into a µm column' : 'µm written into a mil column';
    say(
      slip(
        'settings',
        'danger',
        `Danger ${amount(danger, unit.text)} is out of the ordinary for shaft vibration: it may be ${other}`,
      ),
    );
  }
}

/** Danger setpoints of shaft vibration lie well inside this span, µm; common practice, no source. */
const leastDanger = 12;
const greatestDanger = 1000;

/** Shafts with displacement probes turn faster than this, r/min; common practice, no source. */
const leastSpeed = 60;

function speedSlip({ speed, kind }: Channel, say: Say): void {
  if (speed === null || speed >= leastSpeed || kind !== 'radial') return;
  say(
    slip(
      'channels',
      'speed',
      `A speed of ${amount(speed, 'r/min')} is very slow for a shaft with displacement probes: it may be in thousands, or per second`,
    ),
  );
}

function uncertaintySlip({ uncertainty }: Channel, say: Say): void {
  if (uncertainty === null || uncertainty >= 0.001) return;
  say(
    slip(
      'channels',
      'uncertainty',
      `An uncertainty of ${rounded(100 * uncertainty)} % is smaller than a field calibration can reach: it may be a fraction where percent is meant`,
    ),
  );
}

function slip(table: Statement['table'], column: string, message: string): Statement {
  return {
    rule: 'unit-slip-suspected',
    severity: 'warning',
    message: `${message}. Check the unit.`,
    table,
    column,
  };
}
