// Runs a command of the project on plain Node: the built file, made anew whenever a source is newer. Where nothing can be
// written, it is made in memory, so that a checkout that can only be read works for anyone and nothing is left behind.
// node src/run.mjs audit|calc|bench [arguments …]
import { Buffer } from 'node:buffer';
import { pathToFileURL } from 'node:url';
import { bundled, isFresh, keep, oneFile } from './tools/package/oneFile.mjs';

async function address() {
  if (isFresh()) return pathToFileURL(oneFile).href;
  const { text } = await bundled();
  try {
    keep(text);
    return pathToFileURL(oneFile).href;
  } catch {
    return `data:text/javascript;base64,${Buffer.from(text).toString('base64')}`;
  }
}

await import(await address());
