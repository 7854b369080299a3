import type { ChannelResult } from '../../../audit/model/report.ts';
import { leadingFinding } from './headline.ts';

/** What to check first, by the rule that was found; the first that fits counts. Without words of its own, the finding says it. */
const byRule: readonly { readonly rule: RegExp; readonly check?: string }[] = [
  {
    rule: /^unit-slip-suspected$/u,
    check:
      'Look up the unit in the instrument itself: a slip of units may explain everything else found here.',
  },
  {
    rule: /above-full-scale$/u,
    check: 'Read the full scale and the setpoint in the monitor: a setpoint above full scale never acts.',
  },
  {
    rule: /other-side-of-zero$/u,
    check: 'Measure the zero voltage at the mechanical zero, and check which direction is positive.',
  },
  {
    rule: /out-of-linear-reach$/u,
    check: 'Check the mechanical gap of the probe: the gap voltage leaves too little room for the swing.',
  },
  {
    rule: /^gap-voltage-hides-fault$/u,
    check:
      'Check the extension cable, the driver and the target material, though the gap voltage looks right.',
  },
  { rule: /^readings-point-to-a-cause$/u },
  {
    rule: /-late$/u,
    check:
      'Check that probe, cable and driver belong together in length and type, then measure the sensitivity again.',
  },
  {
    rule: /-undetermined$/u,
    check: 'Measure the sensitivity with less uncertainty: as it is, nothing can be decided.',
  },
  {
    rule: /-early$/u,
    check: 'Check that probe, cable and driver belong together: it over-reads and may trip without need.',
  },
  {
    rule: /^configured-far-from-rated$/u,
    check: 'Look up in the monitor whether the configured sensitivity is meant as it stands.',
  },
];

const cured =
  'As left every threshold acts within the tolerance. Keep both readings with the machine, and look at what happened in the time before it was found.';

/** The next thing a person should check of a channel: a hint, never a verdict. */
export function nextCheck(channel: ChannelResult): string {
  if (channel.verdict === 'incomplete') {
    const why = leadingFinding(channel);
    return why ? `Complete its row first: ${why.message}` : 'Complete its row first.';
  }
  const slip = channel.findings.some(({ rule }) => rule === 'unit-slip-suspected');
  if (channel.asLeft?.verdict === 'within' && channel.verdict !== 'within' && !slip) return cured;
  for (const { rule, check } of byRule) {
    const found = channel.findings.find((finding) => rule.test(finding.rule));
    if (found) return check ?? found.message;
  }
  const warned = channel.findings.find((finding) => finding.severity !== 'note');
  if (warned) return warned.message;
  return 'Nothing stands out. A gap voltage in its band never clears a channel: keep the calibration current.';
}
