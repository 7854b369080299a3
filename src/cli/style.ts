import pico from 'picocolors';

/** How lines are marked: by colours and signs where a terminal shows them, by their words alone elsewhere. */
export interface Style {
  readonly strong: (text: string) => string;
  readonly critical: (text: string) => string;
  readonly warning: (text: string) => string;
  readonly good: (text: string) => string;
  /** Signs before the words, with the space behind them; empty where none are shown. */
  readonly signs: { readonly critical: string; readonly warning: string; readonly good: string };
}

/** Words alone. */
export const plainStyle: Style = styleOf(false, false);

/**
 * The style for a stream: signs on a terminal, colours there too unless `NO_COLOR` is set to something
 * (https://no-color.org); neither for files, pipes and terminals that call themselves dumb.
 */
export function styleFor(
  stream: { readonly isTTY?: boolean },
  env: Readonly<Record<string, string | undefined>>,
): Style {
  const terminal = stream.isTTY === true && env['TERM'] !== 'dumb';
  return styleOf(terminal && (env['NO_COLOR'] ?? '') === '', terminal);
}

function styleOf(coloured: boolean, signed: boolean): Style {
  const { bold, red, yellow, green } = pico.createColors(coloured);
  return {
    strong: bold,
    critical: (text) => bold(red(text)),
    warning: yellow,
    good: green,
    signs: signed ? { critical: '■ ', warning: '▲ ', good: '● ' } : { critical: '', warning: '', good: '' },
  };
}
