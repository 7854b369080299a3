/** The address of the development host, for which the committed manifest is made. */
export const LOCAL_ADDRESS = 'https://localhost:3443';

/** What a person asked of the build or the sideloading cannot be done: one line that says why and what to give instead. */
export class AddressRefused extends Error {
  override readonly name = 'AddressRefused';
}

/**
 * The address under which the built files will be served, without a slash at its end; a path in front of the files
 * (`https://host.example/tripdrift`) is kept.
 * @throws AddressRefused where it is no https address, or carries a user, a query or a fragment.
 * Source: Office loads add-ins over https alone (Microsoft, "Office Add-ins manifest": SourceLocation).
 */
export function parseAddress(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url?.protocol !== 'https:') {
    throw new AddressRefused(
      `--origin ${text}: give a full https address, such as https://host.example/tripdrift`,
    );
  }
  if (url.username !== '' || url.search !== '' || url.hash !== '') {
    throw new AddressRefused(`--origin ${text}: leave out the user, the ? and the # part`);
  }
  const path = url.pathname;
  let end = path.length;
  while (path[end - 1] === '/') end--;
  return url.origin + path.slice(0, end);
}
