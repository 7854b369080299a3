import { useEffect, useRef, useState } from 'preact/hooks';
import { usePort } from '../app/paneContext.ts';
import { followedValues } from './follow.ts';
import type { QuickAction, QuickState } from './quickState.ts';

/** How long the workbook must rest after an edit, and how long reading it may take for that, in milliseconds. */
const rest = 250;
const mostForReading = 1_500;

/**
 * Keeps the fields that were taken from cells as those cells are, while they are edited. `true`: they can't be followed any
 * more, as they moved, hold no number, or take too long to be read.
 */
export function useFollow(state: QuickState, dispatch: (action: QuickAction) => void): boolean {
  const port = usePort();
  const [lost, setLost] = useState(false);
  const latest = useRef(state);
  latest.current = state;
  const took = useRef(0);
  const sheets = [...new Set(Object.values(state.sources).map(({ sheet }) => sheet))].join('\n');
  useEffect(() => {
    setLost(false);
    if (sheets === '') return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let stop: (() => void) | null = null;
    let gone = false;
    const read = async (): Promise<void> => {
      const begun = Date.now();
      const { sheets: all } = await port.readWorkbook();
      took.current = Date.now() - begun;
      const cells = gone ? [] : followedValues(all, latest.current);
      if (cells && cells.length > 0) dispatch({ type: 'took', cells, kind: null, unit: null });
      else if (!cells) setLost(true);
    };
    const given = (): void => {
      setLost(true);
    };
    port
      .onChange((sheet) => {
        if (!sheets.split('\n').includes(sheet)) return;
        clearTimeout(timer);
        if (took.current > mostForReading) setLost(true);
        else timer = setTimeout(() => void read().catch(given), rest);
      })
      .then((off) => {
        if (gone) off();
        else stop = off;
      }, given);
    return () => {
      gone = true;
      clearTimeout(timer);
      stop?.();
    };
  }, [port, sheets]);
  return lost;
}
