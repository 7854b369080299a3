import { type Element, type Fault, at, value } from './element.ts';

const OWN_ADDRESSES: readonly (readonly string[])[] = [
  ['IconUrl'],
  ['HighResolutionIconUrl'],
  ['SupportUrl'],
  ['DefaultSettings', 'SourceLocation'],
  ['VersionOverrides', 'Resources', 'Images', 'Image'],
  ['VersionOverrides', 'Resources', 'Urls', 'Url'],
];

/**
 * Addresses that are not https, leave our origin, or that no built file answers: one missing file is enough for Excel
 * to leave the add-in out of its list without a word. `file` reads a built file by its address.
 */
export function checkAddresses(root: Element, file: (address: string) => Uint8Array | undefined): Fault[] {
  const start = at(root, 'DefaultSettings', 'SourceLocation')[0];
  const origin = start === undefined ? undefined : originOf(value(start));
  const found = OWN_ADDRESSES.flatMap((path) => at(root, ...path)).flatMap((element) => {
    const { line } = element;
    const address = value(element);
    if (!address.startsWith('https://')) return [{ line, message: `${address} is not an https address` }];
    if (originOf(address) !== origin)
      return [{ line, message: `${address} is on another host than the pane` }];
    return file(address) === undefined ? [{ line, message: `no built file answers ${address}` }] : [];
  });
  return [...found, ...at(root, 'AppDomains', 'AppDomain').flatMap(checkDomain)];
}

function originOf(address: string): string | undefined {
  return URL.canParse(address) ? new URL(address).origin : undefined;
}

/** Source: Microsoft, add-in only manifest reference, "AppDomain": protocol and host, no path, no final slash. */
function checkDomain(element: Element): Fault[] {
  const text = value(element);
  return text.startsWith('https://') && originOf(text) === text
    ? []
    : [{ line: element.line, message: `<AppDomain> is "${text}"; write it as https://host.example` }];
}
