import type { HostTheme } from '../port/port.ts';
import type { OfficeLibrary } from './library.ts';

/** The colours of Office's theme; `null` where Excel does not tell them, as on some platforms. */
export function theme({ Office }: OfficeLibrary): HostTheme | null {
  const colors = (Office.context as Partial<Office.Context>).officeTheme as
    Partial<Office.OfficeTheme> | undefined;
  const background = colors?.bodyBackgroundColor;
  const text = colors?.bodyForegroundColor;
  if (background === undefined || text === undefined) return null;
  return { dark: colors?.isDarkTheme ?? isDark(background), background, text };
}

/** Every how many milliseconds the theme is looked at: Excel has no event for it. */
const interval = 5_000;

/** Calls back when Office's theme has changed. */
export function onTheme(library: OfficeLibrary, listener: (theme: HostTheme | null) => void): void {
  let last = JSON.stringify(theme(library));
  setInterval(() => {
    const now = theme(library);
    const text = JSON.stringify(now);
    if (text === last) return;
    last = text;
    listener(now);
  }, interval);
}

/** Whether a colour `#RRGGBB` is nearer to black than to white, by the weights of ITU-R BT.709 for red, green and blue. */
function isDark(color: string): boolean {
  const [red = 0, green = 0, blue = 0] = (/[\da-f]{6}/i.exec(color)?.[0].match(/../g) ?? []).map((part) =>
    Number.parseInt(part, 16),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
