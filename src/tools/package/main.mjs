// Builds the command line into one file, dist/tripdrift.mjs.
import { bundled, keep } from './oneFile.mjs';

const { text } = await bundled();
keep(text);
