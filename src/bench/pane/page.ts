/** How wide the pane may be: in pixels at least, and as part of the page at most; narrow windows keep the least. */
const least = 280;

const most = 0.6;

const usual = 360;

const keyStep = 20;

/** Where the width is kept for as long as the visit lasts. */
const kept = 'tripdrift.bench.pane-width';

const border = document.getElementById('border');
const whole = document.getElementById('bench');
if (border && whole) movableDivider(border, whole, sessionStorage);

/**
 * Makes an element the movable border between grid and pane: dragged, or moved by the arrow keys, Home and End (WAI-ARIA
 * Authoring Practices, pattern “window splitter”). `whole` is what both share; it gets the width as `--pane-width`.
 */
function movableDivider(border: HTMLElement, whole: HTMLElement, storage: Storage): void {
  let wanted = Number(storage.getItem(kept) ?? usual) || usual;
  const widest = (): number => Math.max(least, Math.floor(whole.clientWidth * most));
  const width = (): number => Math.min(widest(), Math.max(least, Math.round(wanted)));
  const show = (): void => {
    whole.style.setProperty('--pane-width', `${width()}px`);
    border.setAttribute('aria-valuemin', String(least));
    border.setAttribute('aria-valuemax', String(widest()));
    border.setAttribute('aria-valuenow', String(width()));
    border.setAttribute('aria-valuetext', `${width()} pixels`);
  };
  const moveTo = (place: number): void => {
    wanted = place;
    wanted = width();
    storage.setItem(kept, String(wanted));
    show();
  };
  const keys: Readonly<Record<string, () => number>> = {
    ArrowLeft: () => width() + keyStep,
    ArrowRight: () => width() - keyStep,
    Home: () => least,
    End: widest,
  };

  border.addEventListener('keydown', (event) => {
    const place = Object.hasOwn(keys, event.key) ? keys[event.key]?.() : undefined;
    if (place === undefined) return;
    event.preventDefault();
    moveTo(place);
  });
  border.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    border.setPointerCapture(event.pointerId);
    whole.classList.add('dividing');
  });
  border.addEventListener('pointermove', (event) => {
    if (!border.hasPointerCapture(event.pointerId)) return;
    moveTo(whole.getBoundingClientRect().right - event.clientX - border.offsetWidth / 2);
  });
  border.addEventListener('lostpointercapture', () => {
    whole.classList.remove('dividing');
  });
  border.addEventListener('dblclick', () => {
    moveTo(usual);
  });
  new ResizeObserver(show).observe(whole);
  show();
}
