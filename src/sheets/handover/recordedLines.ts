import { outcomeText } from '../../audit/advise/replayedText.ts';
import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import { tagKey } from '../../audit/read/tables/tagKey.ts';
import type { Report } from '../../audit/model/report.ts';
import type { Machine } from '../machines.ts';

/** What recorded readings and run-ups say of a machine, a line each: the worst; none where no setpoint was reached. */
export function recordedLines({ name }: Machine, { replay, runUps }: Report): readonly string[] {
  const isOwn = ({ machine }: { readonly machine: string }): boolean => tagKey(machine) === tagKey(name);
  const [event] = (replay?.channels ?? [])
    .filter(isOwn)
    .flatMap(({ tag, thresholds }) =>
      thresholds.flatMap((threshold) => (threshold.outcome === 'not reached' ? [] : [{ tag, threshold }])),
    );
  const [start] = (runUps?.channels ?? [])
    .filter(isOwn)
    .flatMap((channel) =>
      channel.thresholds.flatMap((threshold) =>
        threshold.outcome === 'not reached' ? [] : [{ channel, threshold }],
      ),
    );
  return [
    ...(event
      ? [`By recorded readings, ${event.tag} ${event.threshold.name}: ${outcomeText(event.threshold)}.`]
      : []),
    ...(start
      ? [
          `On the run-up, ${start.channel.tag} ${runUpName(start.threshold)}: ${runUpText(start.channel, start.threshold)}.`,
        ]
      : []),
  ];
}
