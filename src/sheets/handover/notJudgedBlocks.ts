import type { ChannelResult } from '../../audit/model/report.ts';
import type { NotJudged } from '../../audit/model/threshold.ts';
import { heading, text, type Block } from './annexPages.ts';
import { listed } from './clipped.ts';

const words: Readonly<Record<NotJudged, string>> = {
  reach: 'whether the chain can follow that far: no gap voltage is given',
  uncertainty: 'how sure the measured sensitivity is: no uncertainty is given, the value alone decided',
  curve: 'the curve of the calibration record at the operating gap: no gap voltage or zero is given',
  limit: 'whether the danger acts before the machine’s limit: no limit is given',
  'full scale': 'whether the monitor can show the setpoints: no full scale is given',
};

/** What was not judged for want of evidence that is no more than useful, and of which channels. */
export function notJudgedBlocks(channels: readonly ChannelResult[]): Block[] {
  const tags = new Map<NotJudged, Set<string>>();
  for (const { tag, thresholds } of channels) {
    for (const { notJudged } of thresholds)
      for (const what of notJudged) tags.set(what, (tags.get(what) ?? new Set()).add(tag));
  }
  const lines = [...tags].flatMap(([what, own]) => text(`${listed([...own])}: ${words[what]}.`));
  return lines.length === 0 ? [] : [[...heading('What was not judged'), ...lines]];
}
