import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import type { Report } from '../../audit/model/report.ts';
import { plain, wrapped } from '../terminal.ts';

/** What run-ups say, for someone at a terminal: a line a threshold, the worst channels first. */
export function runUpLines({ runUps }: Report, width: number, most: number): string[] {
  if (!runUps || runUps.channels.length === 0) return [];
  const { channels } = runUps;
  return [
    '',
    'Run-ups',
    ...channels
      .slice(0, most)
      .flatMap((channel) =>
        channel.thresholds.map((threshold) =>
          wrapped(
            `  ${plain(channel.tag, 60)} ${runUpName(threshold)}: ${plain(runUpText(channel, threshold))}.`,
            width,
            '    ',
          ),
        ),
      ),
    ...(channels.length > most ? [`  and ${channels.length - most} channels more.`] : []),
  ];
}
