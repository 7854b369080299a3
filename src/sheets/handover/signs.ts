import type { Attention, AttentionCode } from '../../audit/model/report.ts';
import type { ThresholdVerdict } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { verdictLooks, type Standing } from '../look/verdictLooks.ts';
import { onlyWarns } from './withoutRepeatedAlerts.ts';

const words: Readonly<Record<Standing, string>> = { ...verdictWords, 'in bypass': 'in bypass' };

/** What a verdict is called on paper, with a sign that is told without colour. */
export const verdictSigns = Object.fromEntries(
  (Object.keys(words) as Standing[]).map((standing) => [
    standing,
    `${verdictLooks[standing].sign} ${words[standing]}`,
  ]),
) as Readonly<Record<Standing, string>>;

/** The shade behind the sign of what needs action. */
export function shadeOf(code: AttentionCode): ThresholdVerdict {
  return looks[code][1];
}

/** What needs action, in a sign and a word or two; of a threshold that only warns it says so. */
export function signOf(entry: Attention): string {
  const { code } = entry;
  const [sign] = looks[code];
  const [mark = '', ...words] = sign.split(' ');
  return onlyWarns(entry) && code !== 'past-alert' ? `${mark} alert ${words.join(' ')}` : sign;
}

const looks: Readonly<Record<AttentionCode, readonly [sign: string, shade: ThresholdVerdict]>> = {
  'past-danger': ['‼ past DANGER', 'unreachable'],
  'past-alert': ['! past ALERT', 'late'],
  'group-cannot-trip': [`${verdictLooks.unreachable.sign} CANNOT TRIP`, 'unreachable'],
  'group-cannot-act': [verdictSigns.unreachable, 'unreachable'],
  'group-tripped': [`${verdictLooks.early.sign} has tripped`, 'early'],
  unreachable: [verdictSigns.unreachable, 'unreachable'],
  'in-bypass': [verdictSigns['in bypass'], 'unreachable'],
  late: [verdictSigns.late, 'late'],
  'did-not-act': [`${verdictLooks.unreachable.sign} did not act`, 'unreachable'],
  'run-up-no-action': [`${verdictLooks.unreachable.sign} would not act`, 'unreachable'],
  'run-up-late': [`${verdictLooks.late.sign} late on run-up`, 'late'],
  'acted-late': [`${verdictLooks.late.sign} acted late`, 'late'],
  'not-proven': [`${verdictLooks.undetermined.sign} not proven`, 'undetermined'],
  'beyond-limit': [`${verdictLooks.late.sign} beyond limit`, 'late'],
  'group-late': [verdictSigns.late, 'late'],
  'group-beyond-limit': [`${verdictLooks.late.sign} beyond limit`, 'late'],
  undetermined: [verdictSigns.undetermined, 'undetermined'],
  'may-be-beyond-limit': [`${verdictLooks.undetermined.sign} may be beyond limit`, 'undetermined'],
  incomplete: [verdictSigns.incomplete, 'incomplete'],
  'not-read': [`${verdictLooks.incomplete.sign} not read`, 'incomplete'],
  question: [`${verdictLooks.undetermined.sign} asked`, 'incomplete'],
  early: [verdictSigns.early, 'early'],
  finding: ['• check', 'incomplete'],
  problem: ['• check', 'incomplete'],
};
