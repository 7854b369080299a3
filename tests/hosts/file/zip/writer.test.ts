import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../../../src/hosts/file/zip/archive.ts';
import { crc32, tableCrc32 } from '../../../../src/hosts/file/zip/crc32.ts';
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

describe('chunks packed in a second thread', () => {
  /** Chunks of XML and of noise, which can't be made smaller; one is longer than goes to the thread, one is empty. */
  const chunks = [1 << 20, 1 << 20, 70_000, 1 << 20, 1 << 20, 3 << 20, 1 << 20, 0, 1 << 20, 1 << 20, 5].map(
    (length, index) =>
      index % 3 === 2
        ? new Uint8Array(randomBytes(length))
        : Uint8Array.from({ length }, (_, at) => content[(at * (index + 1)) % content.length] ?? 0),
  );

  /** Packs the chunks, each in the same memory as the one before, and waits where told. */
  function packed(wait: (index: number) => void): Uint8Array {
    const { sink, bytes } = collect();
    const push = nodeDeflater(sink);
    const memory = new Uint8Array(3 << 20);
    for (const [index, chunk] of chunks.entries()) {
      memory.set(chunk);
      push(memory.subarray(0, chunk.length), false);
      memory.fill(0);
      wait(index);
    }
    push(new Uint8Array(0), true);
    return bytes();
  }

  const pause = (milliseconds: number): void => {
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);
  };

  it('come in their order and are what went in, whoever packed them, and always the same bytes', () => {
    const wanted = Buffer.concat(chunks);
    const atOnce = packed(() => undefined);
    // Long enough for the thread to start and to pack what it was given.
    const unhurried = packed((index) => {
      pause(index === 1 ? 1_000 : 50);
    });
    expect(Buffer.compare(inflateRawSync(atOnce), wanted)).toBe(0);
    expect(Buffer.compare(unhurried, atOnce)).toBe(0);
  });
});

it('check sums by Node and by the table are the same, in pieces too', () => {
  // Source: the check value of CRC-32/ISO-HDLC for “123456789” (from memory).
  for (const one of [crc32, tableCrc32]) expect(one(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  for (let length = 0; length < 70; length++) {
    const bytes = new Uint8Array(randomBytes(length));
    const half = bytes.subarray(0, length >> 1);
    expect(crc32(bytes)).toBe(tableCrc32(bytes));
    expect(tableCrc32(bytes.subarray(length >> 1), crc32(half))).toBe(crc32(bytes));
  }
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
