import type { Policy } from '../../audit/policy/policy.ts';
import type { ChannelResult } from '../../audit/report/types.ts';
import { wide } from '../look/layout.ts';
import { furtherFindings, needsAttention } from './attention.ts';
import { channelSentences, inputsSentence } from './channelSentences.ts';
import { clipped } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { numberLines, type Place } from './numberLines.ts';
import { heading, line, space, text, type Block, type PageLine } from './page.ts';

/** Channels that get a block of numbers; those after them, the less bad ones, get a line each. */
const mostBlocks = 60;

/** The channels of a machine that don't act as meant, worst first, each with its sentences and its numbers. */
export function channelBlocks({ channels }: Machine, policy: Policy, place: Place): Block[] {
  const wrong = channels.filter(needsAttention);
  if (wrong.length === 0) return [];
  const title = [space, ...heading('Channels that do not act as set, worst first')];
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

/** The thresholds that are shown to scale and in numbers. */
export function shownInFull({ channels }: Machine): readonly ChannelResult[] {
  return channels.filter(needsAttention).slice(0, mostBlocks);
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

function head({ tag, location, kind, verdict, asLeft }: ChannelResult): PageLine {
  const about = [location, kind ?? ''].filter((part) => part !== '').join(' · ');
  return {
    entries: [
      wide(clipped(tag), 'tag', 4),
      wide(clipped(about), 'place', 5),
      wide(asLeft ? `${verdict} as found` : verdict, verdict, 3),
    ],
  };
}

function lineFor(channel: ChannelResult, policy: Policy): PageLine {
  return {
    entries: [
      wide(clipped(channel.tag), 'name', 2),
      wide(clipped(channelSentences(channel, policy), 800), 'wrapped', 8),
      wide(channel.verdict, channel.verdict, 2),
    ],
  };
}
