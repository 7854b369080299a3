/** Calls back with a file that is dropped onto an element, and marks the element while one hovers over it. */
export function takeDrops(element: HTMLElement, dropped: (file: File) => Promise<void>): void {
  const hovers = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
  const listen = (kind: 'dragover' | 'dragleave' | 'drop', heard: (event: DragEvent) => void): void => {
    element.addEventListener(
      kind,
      (event) => {
        if (!hovers(event)) return;
        event.preventDefault();
        event.stopPropagation();
        heard(event);
      },
      { capture: true },
    );
  };
  listen('dragover', () => {
    element.classList.add('dropping');
  });
  listen('dragleave', () => {
    element.classList.remove('dropping');
  });
  listen('drop', ({ dataTransfer }) => {
    element.classList.remove('dropping');
    const file = dataTransfer?.files[0];
    if (file) void dropped(file);
  });
}
