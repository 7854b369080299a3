type Method = (this: unknown, ...given: unknown[]) => unknown;

const stringMethods = [
  'replace',
  'replaceAll',
  'match',
  'matchAll',
  'search',
  'split',
  'normalize',
  'toLowerCase',
  'toUpperCase',
  'trim',
  'indexOf',
  'lastIndexOf',
  'includes',
] as const;

/**
 * How many characters `run` has texts go through: those of each text that is searched, split, put in another case or
 * matched, counted as often as it is. A count, so that it is the same on a slow machine. That no pattern takes longer
 * than in proportion to its text is shown elsewhere.
 */
export function charactersRead(run: () => void): number {
  let read = 0;
  const undo: (() => void)[] = [];
  const patch = (
    owner: object,
    name: string,
    counted: (self: unknown, result: unknown, given: readonly unknown[]) => number,
  ): void => {
    const descriptor = Object.getOwnPropertyDescriptor(owner, name);
    const original = descriptor?.value as Method;
    const counting: Method = function (...given) {
      const result = original.apply(this, given);
      read += counted(this, result, given);
      return result;
    };
    Object.defineProperty(owner, name, { ...descriptor, value: counting });
    undo.push(() => Object.defineProperty(owner, name, descriptor ?? {}));
  };
  for (const name of stringMethods) {
    patch(String.prototype, name, (self, result) =>
      // A search that finds ends there.
      typeof result === 'number' && result >= 0 ? 1 : (self as string).length,
    );
  }
  patch(Array.prototype, 'join', (_, result) => (result as string).length);
  patch(RegExp.prototype, 'test', (_, __, [text]) => String(text).length);
  try {
    run();
  } finally {
    for (const each of undo) each();
  }
  return read;
}
