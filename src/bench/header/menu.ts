/**
 * A button with a panel below it, which opens and closes: by the button, by Escape, and where the focus or a click leaves it
 * (WAI-ARIA Authoring Practices, disclosure).
 */
export function menuButton(text: string, panel: HTMLElement): HTMLElement {
  const whole = document.createElement('div');
  whole.className = 'menu';
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = text;
  button.className = 'menu-button';
  panel.classList.add('menu-panel');
  panel.id = `menu-${text.toLowerCase().replace(/[^a-z]/gu, '')}`;
  panel.role = 'group';
  panel.ariaLabel = text;
  button.setAttribute('aria-controls', panel.id);
  const turn = (open: boolean): void => {
    panel.hidden = !open;
    button.setAttribute('aria-expanded', String(open));
  };
  turn(false);
  button.addEventListener('click', () => {
    turn(panel.hidden === true);
  });
  whole.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || panel.hidden !== false) return;
    event.stopPropagation();
    turn(false);
    button.focus();
  });
  whole.addEventListener('focusout', ({ relatedTarget }) => {
    if (relatedTarget instanceof Node && !whole.contains(relatedTarget)) turn(false);
  });
  document.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Node && !whole.contains(target)) turn(false);
  });
  panel.addEventListener('menu-done', () => {
    turn(false);
    button.focus();
  });
  whole.append(button, panel);
  return whole;
}

/** Closes the menu that a control stands in. */
export function closeMenu(control: HTMLElement): void {
  control.dispatchEvent(new Event('menu-done', { bubbles: true }));
}

/** A choice of one of several, each with a sentence. */
export function radioChoice(
  legend: string,
  choices: readonly { readonly value: string; readonly text: string }[],
  onChoice: (value: string) => void,
): HTMLFieldSetElement {
  const field = document.createElement('fieldset');
  const head = document.createElement('legend');
  head.textContent = legend;
  field.append(head);
  for (const [index, { value, text }] of choices.entries()) {
    const label = document.createElement('label');
    const radio = document.createElement('input');
    radio.type = 'radio';
    radio.name = legend;
    radio.value = value;
    radio.checked = index === 0;
    radio.addEventListener('change', () => {
      onChoice(value);
    });
    label.append(radio, ` ${text}`);
    field.append(label);
  }
  return field;
}
