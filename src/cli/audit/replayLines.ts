import { replayedText } from '../../audit/advise/replayedText.ts';
import type { Report } from '../../audit/model/report.ts';
import { plain, wrapped } from '../terminal.ts';

/** What recorded readings say, for someone at a terminal: the tables that were read, then the worst channels. */
export function replayLines({ replay }: Report, width: number, most: number): string[] {
  if (!replay) return [];
  const { sources, channels } = replay;
  return [
    '',
    `Replay of ${plain(sources.map(({ name }) => name).join(', '))}`,
    ...sources.map(({ name, rows, rowsLeftOut, zone }) =>
      wrapped(
        `  ${sources.length > 1 ? `${plain(name)}: ` : ''}${rows.toLocaleString('en-US')} rows${rowsLeftOut > 0 ? `, ${rowsLeftOut.toLocaleString('en-US')} left out` : ''}; times ${zone === null ? 'with their offsets, shown in UTC' : `in ${plain(zone)}`}.`,
        width,
        '  ',
      ),
    ),
    ...channels
      .slice(0, most)
      .flatMap((channel) => replayedText(channel).map((text) => wrapped(`  ${plain(text)}`, width, '    '))),
    ...(channels.length > most ? [`  and ${channels.length - most} channels more.`] : []),
  ];
}
