import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attention, ChannelResult } from '../../../audit/model/report.ts';
import { auditWords } from '../auditWords.ts';
import { ChannelLine } from './ChannelLine.tsx';
import { useVirtualList } from './useVirtualList.ts';

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
