import { useEffect, useRef, useState } from 'preact/hooks';
import { HostRefused, type SheetArea } from '../../../hosts/port/port.ts';
import { usePort } from '../../app/paneContext.ts';

/** Points at a place in the workbook while it is shown, and away from it in the end. A place that can't be shown is not pointed at. */
export function usePointing(place: SheetArea | null): void {
  const port = usePort();
  const key = keyOf(place);
  const last = useRef(Promise.resolve());
  const point = (to: SheetArea | null): void => {
    // One after the other, so that the last one stays.
    last.current = last.current
      .then(() => port.pointAt(to))
      .catch((error: unknown) => {
        if (!(error instanceof HostRefused)) throw error;
      });
  };
  useEffect(() => {
    point(place);
  }, [key]);
  useEffect(
    () => () => {
      point(null);
    },
    [],
  );
}

/**
 * Hears what the user selects in the workbook while `listens`; what the pane itself points at is not told. The result is
 * what is wrong where the host can't tell.
 */
export function useSelections(
  listens: boolean,
  pointed: SheetArea | null,
  onSelected: (place: SheetArea) => void,
): string | null {
  const port = usePort();
  const [refusal, setRefusal] = useState<string | null>(null);
  const heard = useRef(onSelected);
  heard.current = onSelected;
  const own = useRef<string>('');
  own.current = keyOf(pointed);
  useEffect(() => {
    if (!listens) return;
    let stop: (() => void) | null = null;
    let gone = false;
    setRefusal(null);
    port
      .onSelect((place) => {
        if (!gone && keyOf(place) !== own.current) heard.current(place);
      })
      .then(
        (off) => {
          if (gone) off();
          else stop = off;
        },
        (error: unknown) => {
          if (!(error instanceof HostRefused)) throw error;
          setRefusal(error.message);
        },
      );
    return () => {
      gone = true;
      stop?.();
    };
  }, [port, listens]);
  return refusal;
}

function keyOf(place: SheetArea | null): string {
  if (!place) return '';
  const { top, left, bottom, right } = place.area;
  return JSON.stringify([place.sheet, top, left, bottom, right]);
}
