import {
  elementScroll,
  observeElementOffset,
  observeElementRect,
  Virtualizer,
  type VirtualItem,
} from '@tanstack/virtual-core';
import { useLayoutEffect, useReducer, useState } from 'preact/hooks';
import type { RefObject } from 'preact';

export interface VirtualList {
  readonly items: readonly VirtualItem[];
  readonly height: number;
  readonly scrollTo: (index: number) => void;
}

/** Only the lines of a long list that can be seen, and a few beside them. `lineHeight` in CSS pixels. */
export function useVirtualList(
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
