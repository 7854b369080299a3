import type { JSX, RefObject } from 'preact';
import { useRef, useState, useLayoutEffect, useReducer } from 'preact/hooks';
import type { Attention, ChannelResult } from '../../../audit/model/report.ts';
import { auditMessages, severityNames } from '../auditMessages.ts';
import type { ListRow, MachineRow } from './listRows.ts';
import { MachineLine } from './MachineLine.tsx';
import { worstThreshold } from '../../../audit/model/order.ts';
import { actsFirst, thresholdName } from '../../../audit/model/threshold.ts';
import { capital } from '../../../audit/model/wording.ts';
import { Said } from '../../parts/Said.tsx';
import { Badge } from './Badge.tsx';
import { standingOf } from './standing.ts';
import { levelOf, reallyText } from './thresholdText.ts';
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
  /** It stands below the line of its machine. */
  readonly below: boolean;
}

interface ChannelListProps {
  readonly rows: readonly ListRow[];
  /** Key of the line that is chosen. */
  readonly chosen: string | null;
  readonly onChoose: (row: ListRow) => void;
  /** Opens or closes a machine. */
  readonly onTurn: (row: MachineRow) => void;
  /** What needs action of a channel. */
  readonly attentionOf: (channel: ChannelResult) => readonly Attention[];
}

/** Height of a line, as the style sheet sets it. */
const lineHeight = 72;

/** Machines and their channels as a tree of WAI-ARIA: arrows move, open and close, Enter or Space chooses; only the lines in view are in the page. */
export function ChannelList({ rows, chosen, onChoose, onTurn, attentionOf }: ChannelListProps): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const [activeKey, setActiveKey] = useState('');
  const { items, height, scrollTo } = useVirtualList(box, rows.length, lineHeight);
  const active = Math.max(
    0,
    rows.findIndex(({ key }) => key === activeKey),
  );
  const moveTo = (index: number): void => {
    const next = Math.min(rows.length - 1, Math.max(0, index));
    setActiveKey(rows[next]?.key ?? '');
    scrollTo(next);
  };

  const page = Math.max(1, Math.floor((box.current?.clientHeight ?? lineHeight) / lineHeight) - 1);
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: active - 1,
    ArrowDown: active + 1,
    PageUp: active - page,
    PageDown: active + page,
    Home: 0,
    End: rows.length - 1,
  };
  const sideways = (row: ListRow, key: 'ArrowLeft' | 'ArrowRight'): void => {
    if (row.kind === 'machine' && row.open === (key === 'ArrowLeft')) onTurn(row);
    else if (key === 'ArrowRight') moveTo(row.kind === 'machine' ? active + 1 : active);
    else moveTo(rows.findLastIndex(({ kind }, index) => index < active && kind === 'machine'));
  };
  const onKey = (event: KeyboardEvent): void => {
    const step = steps[event.key];
    const row = rows[active];
    if (step !== undefined) moveTo(step);
    else if (row && (event.key === 'Enter' || event.key === ' ')) onChoose(row);
    else if (row && (event.key === 'ArrowLeft' || event.key === 'ArrowRight')) sideways(row, event.key);
    else return;
    event.preventDefault();
  };

  const activeShown = items.some((item) => item.index === active);
  return (
    <div
      class={`channel-list${chosen === null ? '' : ' channel-list-beside'}`}
      style={{ '--all-lines': `${height + 2}px` }}
      ref={box}
      role="tree"
      tabIndex={0}
      aria-label={`${auditMessages.list}. ${auditMessages.listHint}`}
      aria-activedescendant={activeShown ? `channel-${active}` : undefined}
      onKeyDown={onKey}
    >
      <div class="channel-lines" role="presentation" style={{ height: `${height}px` }}>
        {items.map(({ index, start }) => {
          const row = rows[index];
          if (!row) return null;
          const look = row.kind === 'machine' ? 'machine-line' : `channel-line channel-level-${row.level}`;
          return (
            <div
              key={index}
              id={`channel-${index}`}
              class={`list-line ${look} ${index === active ? 'channel-active' : ''}`}
              style={{ transform: `translateY(${start}px)` }}
              role="treeitem"
              aria-level={row.kind === 'machine' ? 1 : row.level}
              aria-expanded={row.kind === 'machine' ? row.open : undefined}
              aria-selected={row.key === chosen}
              aria-setsize={row.of}
              aria-posinset={row.at}
              onClick={() => {
                setActiveKey(row.key);
                onChoose(row);
              }}
            >
              {row.kind === 'machine' ? (
                <MachineLine {...row} />
              ) : (
                <ChannelLine
                  channel={row.channel}
                  attention={attentionOf(row.channel)}
                  below={row.level === 2}
                />
              )}
            </div>
          );
        })}
      </div>
    </div>
  );
}

/** One channel of the list: how it stands, tag, where it is, the panel reading of its worst threshold, and what that really does. */
function ChannelLine({ channel, attention: [first], below }: ChannelLineProps): JSX.Element {
  const where = [below ? '' : channel.machine, channel.location].filter((text) => text !== '').join(', ');
  const standing = standingOf(channel);
  const worst = worstThreshold(channel.thresholds);
  const panel = worst?.panel ?? null;
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
        {worst && actsFirst(worst) ? (
          auditMessages.actsFirst
        ) : worst && panel !== null ? (
          <>
            Panel <strong>{levelOf(channel, panel)}</strong>: treat as {worst.name}
          </>
        ) : (
          auditMessages.noPanel
        )}
      </span>
      <span class="quiet cut">
        {worst ? `${capital(thresholdName(worst))} ${reallyText(channel, worst)}` : auditMessages.noThreshold}
      </span>
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
