import { expect, it } from 'vitest';
import { meanings } from '../../src/audit/read/understand/meaning.ts';
import { readWords } from '../../src/audit/read/understand/vocabulary/lexicon.ts';

/** Meanings whose words stand in a header, and none of what they are not. */
function meaningsOf(header: string): string[] {
  const { concepts } = readWords(header);
  return [...meanings.values()]
    .filter(({ named }) => named.some((all) => all.every((concept) => concepts.has(concept))))
    .filter(({ not }) => !not.some((concept) => concepts.has(concept)))
    .map(({ id }) => id);
}

it.each([
  ['Gain of the monitor', 'gain'],
  ['Monitorverstärkung', 'gain'],
  ['Uncertainty of monitor gain (%)', 'gainUncertainty'],
  ['Zero voltage uncertainty (V)', 'zeroUncertainty'],
  ['Loop current at 0 % (mA)', 'loopAtZero'],
  ['Schleifenstrom bei 100 % (mA)', 'loopAtSpan'],
  ['Loop current at 100 % uncertainty', 'loopAtSpanUncertainty'],
  ['Chain length (m)', 'chainLength'],
  ['Slow-roll amplitude (mil)', 'runoutAmplitude'],
  ['Slow roll phase', 'runoutPhase'],
  ['Sensitivity at slow roll', 'runoutSensitivity'],
  ['1X amplitude', 'vectorAmplitude'],
])('%s means %s alone', (header, id) => {
  expect(meaningsOf(header)).toEqual([id]);
});

it('an uncertainty of nothing else is that of the sensitivity', () => {
  expect(meaningsOf('Uncertainty (%)')).toEqual(['uncertainty']);
});
