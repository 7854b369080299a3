import type { JSX, RefObject } from 'preact';
import { useEffect, useRef, useState, useLayoutEffect, useReducer } from 'preact/hooks';
import type { Attention, ChannelResult } from '../../../audit/model/report.ts';
import { auditWords, severityNames } from '../auditWords.ts';
import { worstThreshold } from '../../../audit/model/order.ts';
import { thresholdName } from '../../../audit/model/threshold.ts';
import { capital } from '../../../audit/model/wording.ts';
import { Said } from '../../parts/Said.tsx';
import { Badge } from './Badge.tsx';
import { standingOf } from './standing.ts';
import { panelText, reallyText } from './thresholdText.ts';
import {
  elementScroll,
  observeElementOffset,
  observeElementRect,
  Virtualizer,
  type VirtualItem,
} from '@tanstack/virtual-core';

interface VirtualList {
  readonly items: readonly VirtualItem[];
  readonly height: number;
  readonly scrollTo: (index: number) => void;
}

interface ChannelLineProps {
  readonly channel: ChannelResult;
  /** What needs action of it, gravest first. */
  readonly attention: readonly Attention[];
}

interface ChannelListProps {
  readonly channels: readonly ChannelResult[];
  readonly chosen: ChannelResult | null;
  readonly onChoose: (channel: ChannelResult) => void;
  /** What needs action of a channel. */
  readonly attentionOf: (channel: ChannelResult) => readonly Attention[];
}

/** Height of a line, as the style sheet sets it. */
const lineHeight = 72;

/** Channels as a list box of WAI-ARIA: arrows move, Enter or Space chooses; only the lines in view are in the page. */
export function ChannelList({ channels, chosen, onChoose, attentionOf }: ChannelListProps): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const [active, setActive] = useState(0);
  const { items, height, scrollTo } = useVirtualList(box, channels.length, lineHeight);
  useEffect(() => {
    setActive(0);
  }, [channels]);

  const page = Math.max(1, Math.floor((box.current?.clientHeight ?? lineHeight) / lineHeight) - 1);
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: active - 1,
    ArrowDown: active + 1,
    PageUp: active - page,
    PageDown: active + page,
    Home: 0,
    End: channels.length - 1,
  };
  const onKey = (event: KeyboardEvent): void => {
    const step = steps[event.key];
    const line = channels[active];
    if (step !== undefined) {
      const next = Math.min(channels.length - 1, Math.max(0, step));
      setActive(next);
      scrollTo(next);
    } else if ((event.key === 'Enter' || event.key === ' ') && line) {
      onChoose(line);
    } else return;
    event.preventDefault();
  };

  const activeShown = items.some((item) => item.index === active);
  return (
    <div
      class="channel-list"
      ref={box}
      role="listbox"
      tabIndex={0}
      aria-label={`${auditWords.list}. ${auditWords.listHint}`}
      aria-activedescendant={activeShown ? `channel-${active}` : undefined}
      onKeyDown={onKey}
    >
      <div class="channel-lines" role="presentation" style={{ height: `${height}px` }}>
        {items.map(({ index, start }) => {
          const channel = channels[index];
          if (!channel) return null;
          return (
            <div
              key={index}
              id={`channel-${index}`}
              class={`channel-line ${index === active ? 'channel-active' : ''}`}
              style={{ transform: `translateY(${start}px)` }}
              role="option"
              aria-selected={channel === chosen}
              aria-setsize={channels.length}
              aria-posinset={index + 1}
              onClick={() => {
                setActive(index);
                onChoose(channel);
              }}
            >
              <ChannelLine channel={channel} attention={attentionOf(channel)} />
            </div>
          );
        })}
      </div>
    </div>
  );
}

/** One channel of the list: how it stands, tag, where it is, what its worst threshold really does, and the panel reading. */
function ChannelLine({ channel, attention: [first] }: ChannelLineProps): JSX.Element {
  const where = [channel.machine, channel.location].filter((text) => text !== '').join(', ');
  const standing = standingOf(channel);
  const worst = worstThreshold(channel.thresholds);
  return (
    <>
      <span class="channel-first">
        <Badge standing={standing} />
        {standing === 'within' && first && (
          <span class={`badge severity-${first.severity}`}>
            <b>{severityNames[first.severity]}</b>
          </span>
        )}
        <b class="cut channel-tag">
          <Said text={channel.tag} most={60} />
        </b>
        {where !== '' && (
          <span class="quiet cut">
            <Said text={where} most={80} />
          </span>
        )}
      </span>
      <span class="cut">
        {worst ? `${capital(thresholdName(worst))} ${reallyText(channel, worst)}` : auditWords.noThreshold}
      </span>
      <span class="quiet cut">{(worst && panelText(channel, worst)) ?? auditWords.noPanel}</span>
    </>
  );
}

/** Only the lines of a long list that can be seen, and a few beside them. `lineHeight` in CSS pixels. */
function useVirtualList(
  box: RefObject<HTMLDivElement | null>,
  count: number,
  lineHeight: number,
): VirtualList {
  const [, redraw] = useReducer((times: number) => times + 1, 0);
  const options = {
    count,
    getScrollElement: () => box.current,
    estimateSize: () => lineHeight,
    overscan: 5,
    observeElementRect,
    observeElementOffset,
    scrollToFn: elementScroll,
    onChange: () => {
      redraw(undefined);
    },
  };
  const [virtual] = useState(() => new Virtualizer<HTMLDivElement, HTMLElement>(options));
  virtual.setOptions(options);
  useLayoutEffect(() => virtual._didMount(), [virtual]);
  useLayoutEffect(() => {
    virtual._willUpdate();
  });
  return {
    items: virtual.getVirtualItems(),
    height: virtual.getTotalSize(),
    scrollTo: (index) => {
      virtual.scrollToIndex(index);
    },
  };
}
