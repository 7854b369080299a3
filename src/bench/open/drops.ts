/**
 * Calls back with the files that are dropped anywhere on the page, and marks `element` while one hovers. Frames that come into
 * `element` are a part of the page: a browser would show a file that is dropped there in place of what the frame holds.
 */
export function onFilesDropped(
  element: HTMLElement,
  dropped: (files: readonly File[]) => Promise<void>,
): void {
  const listen = (target: EventTarget): void => {
    const on = (kind: 'dragover' | 'dragleave' | 'drop', heard: (event: DragEvent) => void): void => {
      target.addEventListener(
        kind,
        (event) => {
          const drag = event as DragEvent;
          if (!drag.dataTransfer?.types.includes('Files')) return;
          drag.preventDefault();
          drag.stopPropagation();
          heard(drag);
        },
        { capture: true },
      );
    };
    on('dragover', () => {
      element.classList.add('dropping');
    });
    on('dragleave', () => {
      element.classList.remove('dropping');
    });
    on('drop', ({ dataTransfer }) => {
      element.classList.remove('dropping');
      const files = [...(dataTransfer?.files ?? [])];
      if (files.length > 0) void dropped(files);
    });
  };
  listen(element.ownerDocument);
  element.addEventListener(
    'load',
    ({ target }) => {
      const inner = target instanceof HTMLIFrameElement ? target.contentDocument : null;
      if (inner) listen(inner);
    },
    { capture: true },
  );
}
