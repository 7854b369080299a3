import { join } from 'node:path';
import { SOURCE } from '../addin/pageBundle.ts';
import { buildBench } from './benchBuild.ts';

await buildBench(join(SOURCE, '..', 'dist', 'bench'));
process.stdout.write('dist/bench is ready to be served by any static host: open page.html\n');
