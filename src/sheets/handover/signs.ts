import type { Attention, AttentionCode } from '../../audit/model/report.ts';
import type { ThresholdVerdict } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { verdictMarks, type Standing } from '../style/verdictMarks.ts';
import { onlyWarns } from './withoutRepeatedAlerts.ts';

const words: Readonly<Record<Standing, string>> = { ...verdictWords, 'in bypass': 'in bypass' };

/** What a verdict is called on paper, with a sign that is told without colour. */
export const verdictSigns = Object.fromEntries(
  (Object.keys(words) as Standing[]).map((standing) => [
    standing,
    `${verdictMarks[standing].sign} ${words[standing]}`,
  ]),
) as Readonly<Record<Standing, string>>;

/** The shade behind the sign of what needs action. */
export function shadeOf(code: AttentionCode): ThresholdVerdict {
  return signsAndShades[code][1];
}

/** What needs action, in a sign and a word or two; of a threshold that only warns it says so. */
export function signOf(entry: Attention): string {
  const { code } = entry;
  const [sign] = signsAndShades[code];
  const [mark = '', ...words] = sign.split(' ');
  return onlyWarns(entry) && code !== 'past-alert' ? `${mark} alert ${words.join(' ')}` : sign;
}

const signsAndShades: Readonly<Record<AttentionCode, readonly [sign: string, shade: ThresholdVerdict]>> = {
  'past-danger': ['‼ past DANGER', 'unreachable'],
  'past-alert': ['! past ALERT', 'late'],
  'group-cannot-trip': [`${verdictMarks.unreachable.sign} CANNOT TRIP`, 'unreachable'],
  'group-cannot-act': [verdictSigns.unreachable, 'unreachable'],
  'group-tripped': [`${verdictMarks.early.sign} has tripped`, 'early'],
  unreachable: [verdictSigns.unreachable, 'unreachable'],
  'in-bypass': [verdictSigns['in bypass'], 'unreachable'],
  late: [verdictSigns.late, 'late'],
  'did-not-act': [`${verdictMarks.unreachable.sign} did not act`, 'unreachable'],
  'run-up-no-action': [`${verdictMarks.unreachable.sign} would not act`, 'unreachable'],
  'run-up-late': [`${verdictMarks.late.sign} late on run-up`, 'late'],
  'acted-late': [`${verdictMarks.late.sign} acted late`, 'late'],
  'not-proven': [`${verdictMarks.undetermined.sign} not proven`, 'undetermined'],
  'beyond-limit': [`${verdictMarks.late.sign} beyond limit`, 'late'],
  'group-late': [verdictSigns.late, 'late'],
  'group-beyond-limit': [`${verdictMarks.late.sign} beyond limit`, 'late'],
  undetermined: [verdictSigns.undetermined, 'undetermined'],
  'may-be-beyond-limit': [`${verdictMarks.undetermined.sign} may be beyond limit`, 'undetermined'],
  incomplete: [verdictSigns.incomplete, 'incomplete'],
  'not-read': [`${verdictMarks.incomplete.sign} not read`, 'incomplete'],
  question: [`${verdictMarks.undetermined.sign} asked`, 'incomplete'],
  early: [verdictSigns.early, 'early'],
  finding: ['• check', 'incomplete'],
  problem: ['• check', 'incomplete'],
};
