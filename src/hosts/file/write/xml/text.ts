const markup = /[&<>"]/;

/** Text as it stands between tags or inside a double-quoted attribute of XML 1.0. */
export function escapeXml(text: string): string {
  if (!markup.test(text)) return text;
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

const special = /[&<>_\p{Cc}\uFFFE\uFFFF\p{Surrogate}]/u;
const notXml = /(?![\t\n])[\p{Cc}\uFFFE\uFFFF]|_(?=x[0-9A-Fa-f]{4}_)/gu;
const loneSurrogate = /\p{Surrogate}/gu;

/**
 * Text of a cell as the format's `ST_Xstring` stores it (ECMA-376 part 1, 22.9.2.19): a character XML cannot hold
 * becomes `_xHHHH_`, an underscore that would begin such a code becomes `_x005F_`; a carriage return is coded too,
 * as XML would turn it into a line feed. Half of a surrogate pair is no character at all and becomes U+FFFD.
 */
export function escapeCellText(text: string): string {
  if (!special.test(text)) return text;
  const coded = text
    .replace(
      notXml,
      (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    )
    .replace(loneSurrogate, '\uFFFD');
  return escapeXml(coded);
}

/** Whether a reader might drop white space of this text unless told to keep it. */
export function hasLooseSpace(text: string): boolean {
  return /^\s|\s$|[\t\n]| {2}/.test(text);
}

const notInXml = /(?![\t\n])[\p{Cc}\uFFFE\uFFFF\p{Surrogate}]/gu;

/** Text of a drawing, between tags or in an attribute: characters that XML cannot hold become U+FFFD. */
export function escapeDrawingText(text: string): string {
  return escapeXml(text.replace(notInXml, '\uFFFD')).replaceAll('\n', '&#10;');
}
