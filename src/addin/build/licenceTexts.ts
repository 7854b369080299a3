/**
 * Licences that whole families of packages are under, each from its first word of substance to its last. Names are those of
 * SPDX; the texts are read from the packages.
 */
const known = [
  {
    name: 'Apache-2.0',
    from: 'Apache License Version 2.0, January 2004',
    to: 'END OF TERMS AND CONDITIONS',
  },
  {
    name: 'Apache-2.0, appendix',
    from: 'APPENDIX: How to apply the Apache License to your work.',
    to: 'limitations under the License.',
  },
  { name: 'MIT', from: 'Permission is hereby granted, free of charge,', to: 'DEALINGS IN THE SOFTWARE.' },
  {
    name: 'ISC',
    from: 'Permission to use, copy, modify, and/or distribute this software for any purpose',
    to: 'PERFORMANCE OF THIS SOFTWARE.',
  },
  {
    name: 'BSD',
    from: 'Redistribution and use in source and binary forms,',
    to: 'POSSIBILITY OF SUCH DAMAGE.',
  },
] as const;

/** A licence file: the texts that others have too, and what is this package's own, such as its copyright. */
export interface LicenceFile {
  /** Texts of known licences as they stand there. */
  readonly shared: readonly string[];
  readonly own: string;
}

/** Splits a licence file. */
export function splitLicence(file: string): LicenceFile {
  const shared: string[] = [];
  let rest = file.replaceAll('\r\n', '\n');
  for (const { from, to } of known) {
    const found = between(from, to).exec(rest);
    if (!found) continue;
    shared.push(found[0]);
    rest = `${rest.slice(0, found.index).trimEnd()}\n\n${rest.slice(found.index + found[0].length).trimStart()}`;
  }
  return { shared, own: rest.trim() };
}

/** From one wording to another, however its lines are broken. */
function between(from: string, to: string): RegExp {
  const words = (text: string) =>
    text
      .split(' ')
      .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/gu, '\\$&'))
      .join('\\s+');
  return new RegExp(`[^\\S\\n]*${words(from)}[^]*?${words(to)}`, 'u');
}

/** A licence text without what makes the same words look different: line breaks, the form of an address, a copyright. */
export function sameWords(text: string): string {
  return text
    .split('\n')
    .filter((line) => !(/\bcopyright\b/iu.test(line) && /\d{4}/u.test(line)))
    .join('\n')
    .replaceAll('https:', 'http:')
    .replaceAll(/[\s"“”'’*]+/gu, ' ')
    .trim()
    .toLowerCase();
}
