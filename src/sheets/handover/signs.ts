import type { Attention, AttentionCode } from '../../audit/model/report.ts';
import type { ThresholdVerdict } from '../../audit/model/threshold.ts';
import { onlyWarns } from './graveEntries.ts';

/** What a verdict is called on paper, with a sign that is told without colour. */
export const verdictSigns: Readonly<Record<ThresholdVerdict | 'in bypass', string>> = {
  unreachable: '✕ cannot act',
  'in bypass': '✕ in bypass',
  late: '▶ late',
  undetermined: '? uncertain',
  early: '◀ early',
  incomplete: '– not known',
  within: '✓ OK',
};

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
  'group-cannot-trip': ['✕ CANNOT TRIP', 'unreachable'],
  'group-cannot-act': ['✕ cannot act', 'unreachable'],
  'group-tripped': ['◀ has tripped', 'early'],
  unreachable: [verdictSigns.unreachable, 'unreachable'],
  'in-bypass': [verdictSigns['in bypass'], 'unreachable'],
  late: [verdictSigns.late, 'late'],
  'did-not-act': ['✕ did not act', 'unreachable'],
  'run-up-no-action': ['✕ would not act', 'unreachable'],
  'run-up-late': ['▶ late on run-up', 'late'],
  'acted-late': ['▶ acted late', 'late'],
  'not-proven': ['? not proven', 'undetermined'],
  'beyond-limit': ['▶ beyond limit', 'late'],
  'group-late': ['▶ late', 'late'],
  'group-beyond-limit': ['▶ beyond limit', 'late'],
  undetermined: [verdictSigns.undetermined, 'undetermined'],
  'may-be-beyond-limit': ['? may be beyond limit', 'undetermined'],
  incomplete: [verdictSigns.incomplete, 'incomplete'],
  'not-read': ['– not read', 'incomplete'],
  question: ['? asked', 'incomplete'],
  early: [verdictSigns.early, 'early'],
  finding: ['• check', 'incomplete'],
  problem: ['• check', 'incomplete'],
};
