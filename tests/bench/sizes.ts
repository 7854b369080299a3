import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { LOCAL_ADDRESS } from '../../src/tools/addin/address.ts';
import { buildAddin } from '../../src/tools/addin/main.ts';
import { LIMITS, packedSizes } from '../addin/packedSizes.ts';

/** What a first start of the add-in fetches: `npx tsx tests/bench/sizes.ts`. */
const folder = mkdtempSync(join(tmpdir(), 'tripdrift-sizes-'));
try {
  await buildAddin(folder, { address: LOCAL_ADDRESS, cdn: false });
  const { functions, pane, office } = packedSizes(folder);
  console.table([
    { part: 'functions: script and description', 'kB gzip': functions.toFixed(1), limit: LIMITS.functions },
    { part: 'pane: page, scripts and styles', 'kB gzip': pane.toFixed(1), limit: LIMITS.pane },
    { part: 'Office.js for Excel on Windows', 'kB gzip': office.toFixed(1), limit: '–' },
  ]);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
