import type { Plugin } from 'vite';

/** Collects the names of the packages whose code is in a build. */
export interface PackageList {
  readonly names: ReadonlySet<string>;
  /** Adds what the build that it is part of takes in; a new one for each build. */
  readonly plugin: () => Plugin;
}

/** A list that is full once the builds are through in which its plugin is. */
export function packageList(): PackageList {
  const names = new Set<string>();
  return {
    names,
    plugin: () => ({
      name: 'package-list',
      generateBundle(_options, bundle) {
        for (const part of Object.values(bundle)) {
          if (part.type === 'chunk')
            for (const id of part.moduleIds) for (const name of packageOf(id)) names.add(name);
        }
      },
    }),
  };
}

/** The package that a module comes from; none for our own. */
function packageOf(id: string): string[] {
  const [, ...inside] = id.replaceAll('\\', '/').split('/node_modules/');
  const name = /^(?:@[^/]+\/)?[^/]+/.exec(inside.at(-1) ?? '')?.[0];
  return name === undefined ? [] : [name];
}
