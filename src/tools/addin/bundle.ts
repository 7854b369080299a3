import { type InlineConfig, build, mergeConfig } from 'vite';
import { packageList } from './packageList.ts';

/** Bundles, and names the packages whose code is in the result. */
export async function bundle(config: InlineConfig): Promise<string[]> {
  const packages = packageList();
  await build(mergeConfig(config, { plugins: [packages.plugin()] }));
  return [...packages.names];
}
