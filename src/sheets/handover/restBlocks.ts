import type { ChannelResult } from '../../audit/model/report.ts';
import { wide } from '../look/layout.ts';
import { isAboutThreshold } from '../results/findings.ts';
import { thresholdSentence } from '../summary/sentence.ts';
import { capital } from '../../audit/model/wording.ts';
import { furtherFindings, isWrong, needsAttention } from './attention.ts';
import { clipped } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { heading, line, space, text, type Block, type PageLine } from './page.ts';

/** The channels whose thresholds act as meant, by name, and what else was found of them. */
export function unaffectedBlocks({ channels }: Machine): Block[] {
  const fine = channels.filter((channel) => channel.verdict !== 'incomplete' && !needsAttention(channel));
  if (fine.length === 0) return [];
  const remarked = fine.filter((channel) => furtherFindings(channel).length > 0);
  const names = fine.map(({ tag }) => clipped(tag)).join(', ');
  return [
    [
      space,
      ...heading('Channels within the tolerance, as far as audited'),
      ...text(`${names}.`),
      ...(remarked.length > 0 ? [line('Of these, look at:', 'remark')] : []),
    ],
    ...remarked.map((channel): Block => [
      pair(
        channel.tag,
        furtherFindings(channel)
          .map(({ message }) => message)
          .join(' · '),
      ),
    ]),
  ];
}

/** The channels that could not be judged, why, and what of them was judged all the same. */
export function notJudgedBlocks({ channels }: Machine): Block[] {
  const incomplete = channels.filter(({ verdict }) => verdict === 'incomplete');
  if (incomplete.length === 0) return [];
  const lines = incomplete.map((channel) => pair(channel.tag, whyNot(channel)));
  const [first, ...rest] = lines;
  return [
    [space, ...heading('Not judged: nothing is known about their protection'), ...(first ? [first] : [])],
    ...rest.map((one): Block => [one]),
  ];
}

/** Why a channel could not be judged, with the cells to correct. */
function whyNot(channel: ChannelResult): string {
  const { findings, source, thresholds, location } = channel;
  const reasons = findings
    .filter((finding) => finding.severity !== 'note' && !isAboutThreshold(finding))
    .map(({ message, sheet, row, column }) => `${message} (${sheet}, row ${row}, column ${column})`);
  const known = thresholds
    .filter((threshold) => isWrong(channel, threshold))
    .map((threshold) => `${capital(threshold.name)}: ${thresholdSentence(channel, threshold)}`);
  const fallback = `See row ${source.channels.row} of ${source.channels.sheet}.`;
  return [location === '' ? '' : `${capital(clipped(location))}.`, reasons.join(' ') || fallback, ...known]
    .filter((part) => part !== '')
    .join(' ');
}

/** A name and what there is to say of it. */
export function pair(name: string, words: string): PageLine {
  return { entries: [wide(clipped(name), 'name', 2), wide(clipped(words, 1500), 'wrapped', 10)] };
}
