import { type InlineConfig, build } from 'vite';

/** Bundles, and names the packages whose code is in the result. */
export async function bundle(config: InlineConfig): Promise<string[]> {
  const built = await build(config);
  if ('on' in built) throw new Error('the bundler was told to watch, and gave no result');
  const outputs = Array.isArray(built) ? built : [built];
  const modules = outputs.flatMap(({ output }) =>
    output.flatMap((part) => (part.type === 'chunk' ? part.moduleIds : [])),
  );
  return [...new Set(modules.flatMap(packageOf))];
}

/** The package that a module comes from; none for our own. */
function packageOf(id: string): string[] {
  const [, ...inside] = id.replaceAll('\\', '/').split('/node_modules/');
  const name = /^(?:@[^/]+\/)?[^/]+/.exec(inside.at(-1) ?? '')?.[0];
  return name === undefined ? [] : [name];
}
