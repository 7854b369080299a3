import type { ShareFormulas } from '../../share/types.ts';
import { closeMenu, menuButton, radioChoice } from './menu.ts';

export interface BarActions {
  readonly open: (file: File) => Promise<void>;
  readonly save: () => Promise<void>;
  readonly share: (formulas: ShareFormulas) => Promise<void>;
  readonly blankChanged: () => Promise<void>;
}

export interface Bar {
  showFile(name: string): void;
  /** What functions receive for a blank cell. */
  blank(): 0 | null;
}

const words = {
  name: 'Tripdrift bench',
  open: 'Open…',
  save: 'Save a copy',
  share: 'Share…',
  shareHint: 'A copy for people without Tripdrift. Your workbook stays as it is.',
  shared: 'Where a formula calls Tripdrift, the copy has',
  values: 'its value, the formula in a note',
  native: 'a formula without Tripdrift where there is one, else its value',
  make: 'Make the copy',
  settings: 'Settings',
  blank: 'A function that is given a blank cell receives',
  nothing: 'nothing, as in Excel on the web',
  zero: '0, as in Excel for desktop',
} as const;

/** Fills the bar above the grid: the file's name, opening, saving, a copy to share, settings. */
export function fillBar(root: HTMLElement, actions: BarActions): Bar {
  const title = make('h1', words.name);
  const file = make('span', '');
  file.className = 'file';

  const chooser = make('input', '');
  chooser.type = 'file';
  chooser.accept = '.xlsx,.xlsm,.xltx,.xltm,.csv';
  chooser.hidden = true;
  chooser.addEventListener('change', () => {
    const [chosen] = chooser.files ?? [];
    chooser.value = '';
    if (chosen) void actions.open(chosen);
  });
  const open = button(words.open, () => {
    chooser.click();
  });
  const save = button(words.save, () => void actions.save());

  let formulas: ShareFormulas = 'values';
  const sharing = make('div', '');
  const copy = button(words.make, () => {
    closeMenu(copy);
    void actions.share(formulas);
  });
  sharing.append(
    make('p', words.shareHint),
    radioChoice(
      words.shared,
      [
        { value: 'values', text: words.values },
        { value: 'native', text: words.native },
      ],
      (value) => {
        formulas = value === 'native' ? 'native' : 'values';
      },
    ),
    copy,
  );

  let blank: 0 | null = null;
  const settings = make('div', '');
  settings.append(
    radioChoice(
      words.blank,
      [
        { value: 'nothing', text: words.nothing },
        { value: 'zero', text: words.zero },
      ],
      (value) => {
        blank = value === 'zero' ? 0 : null;
        void actions.blankChanged();
      },
    ),
  );

  root.append(
    title,
    file,
    chooser,
    open,
    save,
    menuButton(words.share, sharing),
    menuButton(words.settings, settings),
  );
  return {
    showFile: (name) => {
      file.textContent = name;
      file.title = name;
      document.title = `${name} – ${words.name}`;
    },
    blank: () => blank,
  };
}

function make<Tag extends keyof HTMLElementTagNameMap>(tag: Tag, text: string): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

function button(text: string, pressed: () => void): HTMLButtonElement {
  const element = make('button', text);
  element.type = 'button';
  element.addEventListener('click', pressed);
  return element;
}
