import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../../../src/hosts/file/zip/archive.ts';
import { fflateDeflater } from '../../../../src/hosts/file/zip/deflater.ts';
import { defaultLimits } from '../../../../src/hosts/file/zip/limits.ts';
import { nodeDeflater } from '../../../../src/hosts/file/zip/nodeDeflater.ts';
import { testWithTool } from '../../../tool.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { zipWriter } from '../../../../src/hosts/file/zip/writer.ts';

const text = Array.from(
  { length: 30_000 },
  (_, index) => `<c r="A${index}"><v>${Math.sin(index)}</v></c>`,
).join('');
const content = new TextEncoder().encode(text);

function archive(deflater = fflateDeflater()): Uint8Array {
  const file = collect();
  const zip = zipWriter(file.sink, deflater);
  const sink = zip.begin('big.xml');
  for (let at = 0; at < content.length; at += 100_000) sink.push(content.subarray(at, at + 100_000));
  sink.end();
  zip.add('empty.xml', new Uint8Array(0));
  zip.add('größe.xml', new TextEncoder().encode('x'));
  zip.finish();
  return file.bytes();
}

describe.each([
  ['fflate, level 1', fflateDeflater()],
  ['fflate, level 6', fflateDeflater(6)],
  ['zlib of Node', nodeDeflater],
])('an archive packed by %s', (_, deflater) => {
  it('is read whole by fflate', () => {
    const parts = unzipSync(archive(deflater));
    expect(Object.keys(parts)).toEqual(['big.xml', 'empty.xml', 'größe.xml']);
    expect(Buffer.compare(parts['big.xml']!, content)).toBe(0);
    expect(parts['empty.xml']).toHaveLength(0);
  });

  testWithTool('unzip', 'is found without fault, check sums included, by another unzip', () => {
    const folder = mkdtempSync(join(tmpdir(), 'zip-'));
    try {
      const path = join(folder, 'a.zip');
      writeFileSync(path, archive(deflater));
      // Source: Info-ZIP's unzip, an independent reader; it fails where a check sum or size is wrong.
      expect(execFileSync('unzip', ['-t', path], { encoding: 'utf8' })).toContain('No errors detected');
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

testWithTool(
  'python3',
  'a copied entry keeps packed bytes, name and date, and carries its sizes in front',
  () => {
    // An archive in the streaming way: sizes behind the data (general purpose bit 3), as a pipe would write it.
    const folder = mkdtempSync(join(tmpdir(), 'zip-'));
    try {
      const script =
        "import sys,zipfile\nclass Pipe:\n  def __init__(s,f): s.f=f\n  def write(s,b): return s.f.write(b)\n  def flush(s): s.f.flush()\nwith zipfile.ZipFile(Pipe(open(sys.argv[1],'wb')),'w',8) as z: z.writestr('a.txt','hello '*99)";
      const path = join(folder, 'piped.zip');
      execFileSync('python3', ['-c', script, path]);
      const piped = new Uint8Array(readFileSync(path));
      const [entry] = openZip(piped, defaultLimits).entries;
      expect(entry!.flags & 8).toBe(8);
      const { sink, bytes } = collect();
      const zip = zipWriter(sink);
      zip.copy(entry!);
      zip.finish();
      const [copied] = openZip(bytes(), defaultLimits).entries;
      expect(copied).toMatchObject({
        name: 'a.txt',
        modified: entry!.modified,
        crc: entry!.crc,
        flags: entry!.flags & ~8,
      });
      expect(Buffer.compare(copied!.raw, entry!.raw)).toBe(0);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
);
