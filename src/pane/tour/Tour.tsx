import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ViewId } from '../app/views.ts';
import { tourSteps, tourMessages } from './tourMessages.ts';

/** Where it is kept on this computer that the tour was seen. */
const kept = 'tripdrift.tour';

interface TourProps {
  readonly onView: (view: ViewId) => void;
}

/** What the pane can do, in three steps, shown until it was gone through or skipped once. Escape skips it. */
export function Tour({ onView }: TourProps): JSX.Element | null {
  const [step, setStep] = useState(() => (wasSeen() ? tourSteps.length : 0));
  const head = useRef<HTMLParagraphElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    if (moved.current) head.current?.focus();
  }, [step]);
  const now = tourSteps[step];
  if (!now) return null;
  const end = (): void => {
    remember();
    setStep(tourSteps.length);
  };
  const last = step === tourSteps.length - 1;
  return (
    <section
      class="tour"
      aria-label={tourMessages.name}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        end();
      }}
    >
      <p ref={head} tabIndex={-1}>
        <b>{tourMessages.step(step + 1, tourSteps.length)}</b> {now.text}
      </p>
      <div class="button-row">
        <button
          type="button"
          class="button button-first"
          onClick={() => {
            if (last) {
              end();
              return;
            }
            const next = tourSteps[step + 1];
            if (next) onView(next.view);
            moved.current = true;
            setStep(step + 1);
          }}
        >
          {last ? tourMessages.done : tourMessages.next}
        </button>
        {!last && (
          <button type="button" class="button" onClick={end}>
            {tourMessages.skip}
          </button>
        )}
      </div>
    </section>
  );
}

/** A browser may forbid to keep anything; the tour is then shown again. */
function wasSeen(): boolean {
  try {
    return window.localStorage.getItem(kept) !== null;
  } catch {
    return false;
  }
}

function remember(): void {
  try {
    window.localStorage.setItem(kept, 'seen');
  } catch {
    // Nothing is lost: the tour is shown again.
  }
}
