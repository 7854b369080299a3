import type { Policy } from '../../audit/model/policy.ts';
import { rank } from '../../audit/model/order.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { wide } from '../look/layout.ts';
import { channelNow } from './asLeft.ts';
import { furtherFindings, needsAttention } from './attention.ts';
import { channelSentences, inputsSentence } from './channelSentences.ts';
import { clipped } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { numberLines, type Place } from './numberLines.ts';
import { heading, line, space, text, type Block, type PageLine } from './page.ts';

/** Channels that get a block of numbers; those after them, the less bad ones, get a line each. */
const mostBlocks = 60;

/** The channels of a machine that don't act as meant, or did not, worst now first, each with its sentences and its numbers. */
export function channelBlocks(machine: Machine, policy: Policy, place: Place): Block[] {
  const wrong = calling(machine);
  if (wrong.length === 0) return [];
  const title = [space, ...heading(titleOver(wrong))];
  const blocks = wrong.slice(0, mostBlocks).flatMap((channel, index): Block[] => {
    const [numbers = [], ...further] = channelBlock(channel, policy, place);
    return [[...(index === 0 ? title : []), ...numbers], ...further];
  });
  const rest = wrong.slice(mostBlocks);
  if (rest.length === 0) return blocks;
  return [
    ...blocks,
    [
      space,
      line(
        `The other ${rest.length}, less bad than those above, in a line each; their numbers stand in the audit’s own sheets.`,
        'remark',
      ),
    ],
    ...rest.map((channel): Block => [lineFor(channel, policy)]),
  ];
}

function titleOver(wrong: readonly ChannelResult[]): string {
  const cured = wrong.some(({ asLeft }) => asLeft?.verdict === 'within');
  return cured
    ? 'Channels that do not act as set, or did not when found; the worst now first'
    : 'Channels that do not act as set, worst first';
}

/** Channels that need attention, the worst as they stand now first; of equals as in the report. */
function calling({ channels }: Machine): readonly ChannelResult[] {
  const now = (channel: ChannelResult) => rank(channelNow(channel).verdict);
  return channels.filter(needsAttention).toSorted((one, other) => now(one) - now(other));
}

/** The channels whose thresholds are shown to scale and in numbers. */
export function shownInFull(machine: Machine): readonly ChannelResult[] {
  return calling(machine).slice(0, mostBlocks);
}

/** A channel's sentences and numbers, and what else was found of it. */
function channelBlock(channel: ChannelResult, policy: Policy, place: Place): readonly Block[] {
  const further = furtherFindings(channel).map(({ message }) => message);
  const sentences = channelSentences(channel, policy) || 'It acts within the tolerance, but see below.';
  const inputs = inputsSentence(channel);
  return [
    [
      head(channel),
      ...text(sentences),
      ...(inputs === '' ? [] : [line(inputs, 'remark')]),
      ...numberLines(channel, policy, place),
    ],
    ...further.map((message, index) => text(index === 0 ? `Also: ${message}` : message, 'remark')),
    [space],
  ];
}

function head(channel: ChannelResult): PageLine {
  const { tag, location, kind, asLeft } = channel;
  const { verdict } = channelNow(channel);
  const about = [location, kind ?? ''].filter((part) => part !== '').join(' · ');
  return {
    entries: [
      wide(clipped(tag), 'tag', 4),
      wide(clipped(about), 'place', 5),
      wide(asLeft ? `${verdict} as left` : verdict, verdict, 3),
    ],
  };
}

function lineFor(channel: ChannelResult, policy: Policy): PageLine {
  return {
    entries: [
      wide(clipped(channel.tag), 'name', 2),
      wide(clipped(channelSentences(channel, policy), 800), 'wrapped', 8),
      wide(channelNow(channel).verdict, channelNow(channel).verdict, 2),
    ],
  };
}
