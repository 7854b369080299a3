import type { ShareFormulas } from '../../share/types.ts';

export interface BarDeeds {
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
  share: 'Copy to share',
  shareHint: 'A copy for people without Tripdrift',
  shared: 'Formulas in the copy to share',
  values: 'values, kept in notes',
  native: 'native formulas, else values',
  blank: 'Blank cells as',
  zero: '0, as Excel for desktop',
  nothing: 'blank, as Excel on the web',
} as const;

/** Fills the bar above the grid: the file's name, opening, saving, and what blank cells are to functions. */
export function fillBar(root: HTMLElement, deeds: BarDeeds): Bar {
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
    if (chosen) void deeds.open(chosen);
  });
  const open = button(words.open, () => {
    chooser.click();
  });
  const save = button(words.save, () => void deeds.save());

  const formulas = make('select', '');
  formulas.append(new Option(words.values, 'values'), new Option(words.native, 'native'));
  const share = button(
    words.share,
    () => void deeds.share(formulas.value === 'native' ? 'native' : 'values'),
  );
  share.title = words.shareHint;
  formulas.ariaLabel = words.shared;

  const label = make('label', words.blank);
  const blank = make('select', '');
  blank.append(new Option(words.nothing, 'null'), new Option(words.zero, '0'));
  blank.addEventListener('change', () => void deeds.blankChanged());
  label.append(blank);

  root.append(title, file, label, chooser, open, save, share, formulas);
  return {
    showFile: (name) => {
      file.textContent = name;
      file.title = name;
      document.title = `${name} – ${words.name}`;
    },
    blank: () => (blank.value === '0' ? 0 : null),
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
