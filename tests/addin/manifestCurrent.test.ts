import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LOCAL_ADDRESS } from '../../src/tools/addin/address.ts';
import { currentManifest } from '../../src/tools/addin/manifestBuild.ts';

describe('manifest.xml', () => {
  it('is what `npm run manifest` writes now', () => {
    const committed = readFileSync(join(import.meta.dirname, '..', '..', 'manifest.xml'), 'utf8');
    expect(committed).toBe(currentManifest(LOCAL_ADDRESS));
  });
});
