import { Worker } from 'node:worker_threads';
import { constants, deflateRawSync } from 'node:zlib';
import type { Deflater } from './deflater.ts';

/** A deflate stream's empty last block (RFC 1951, 3.2.6). */
const lastBlock = Uint8Array.of(3, 0);

/** Chunks on their way at once, and the longest that goes to the thread. */
const slots = 4;
const longest = 1 << 20;
/** Room for a packed chunk: one that can't be made smaller grows by a few bytes in each 16 kB (zlib's manual, from memory). */
const packedRoom = longest + longest / 8;

type Sink = (packed: Uint8Array) => void;

/** What a slot holds: nothing, a chunk, one that somebody is packing, or a packed one. */
const free = 0;
const ready = 1;
const taken = 2;
const packed = 3;

/** How long, in ms, either side waits for the other: ages for a chunk, so that an entry never ended leaves no thread behind. */
const patience = 5_000;

/** How chunks are packed, here as there. */
const packing = { level: 1, finishFlush: constants.Z_SYNC_FLUSH, chunkSize: 1 << 18 } as const;

/**
 * Packs with the zlib of Node, for programs that run there. Each chunk ends on a byte boundary, so that the chunks make one
 * stream. An entry of several chunks has a thread that packs them while the next are made; whatever that has not begun when
 * its turn comes is packed here, so that nothing ever waits for the thread to start.
 */
export const nodeDeflater: Deflater = (sink) => {
  let isFirst = true;
  let thread: PackingThread | undefined;
  return (chunk, last) => {
    if (chunk.length > 0) {
      if (isFirst || chunk.length > longest) {
        thread?.deliverAll(sink);
        sink(pack(chunk));
      } else {
        thread ??= new PackingThread();
        thread.take(chunk, sink);
      }
      isFirst = false;
    }
    if (!last) return;
    thread?.deliverAll(sink);
    thread?.end();
    sink(lastBlock);
  };
};

function pack(chunk: Uint8Array): Uint8Array {
  return deflateRawSync(chunk, packing);
}

/** The thread that packs chunks, and the memory by which both sides know of them. */
class PackingThread {
  readonly #shared = {
    /** Counts what the thread should look at. */
    changes: new Int32Array(new SharedArrayBuffer(4)),
    ended: new Int32Array(new SharedArrayBuffer(4)),
    states: new Int32Array(new SharedArrayBuffer(4 * slots)),
    lengths: new Int32Array(new SharedArrayBuffer(4 * slots)),
    packedLengths: new Int32Array(new SharedArrayBuffer(4 * slots)),
    chunks: Array.from({ length: slots }, () => new Uint8Array(new SharedArrayBuffer(longest))),
    packedChunks: Array.from({ length: slots }, () => new Uint8Array(new SharedArrayBuffer(packedRoom))),
  } as const;
  #given = 0;
  #delivered = 0;
  #isLost = false;

  constructor() {
    const workerData = { ...this.#shared, packing, marks: { ready, taken, packed }, patience };
    const worker = new Worker(threadSource, { eval: true, workerData });
    worker.unref();
    // A thread that did not start, or died, has nothing that is not packed here in its place.
    worker.on('error', () => undefined);
  }

  /** Takes a chunk over; the packed one whose slot it needs goes to the sink first. */
  take(chunk: Uint8Array, sink: Sink): void {
    if (this.#given - this.#delivered === slots) this.#deliver(sink);
    if (this.#isLost) {
      this.deliverAll(sink);
      sink(pack(chunk));
      return;
    }
    const slot = this.#given++ % slots;
    const { chunks, lengths, states } = this.#shared;
    chunks[slot]?.set(chunk);
    lengths[slot] = chunk.length;
    Atomics.store(states, slot, ready);
    this.#tell();
  }

  /** Hands on all that is not yet delivered. */
  deliverAll(sink: Sink): void {
    while (this.#delivered < this.#given) this.#deliver(sink);
  }

  /** Has the thread end itself. */
  end(): void {
    Atomics.store(this.#shared.ended, 0, 1);
    this.#tell();
  }

  #deliver(sink: Sink): void {
    const slot = this.#delivered++ % slots;
    const { chunks, lengths, packedChunks, packedLengths, states } = this.#shared;
    const isHere = this.#isLost || Atomics.compareExchange(states, slot, ready, taken) === ready;
    if (!isHere && Atomics.wait(states, slot, taken, patience) === 'timed-out') this.#isLost = true;
    if (isHere || this.#isLost) sink(pack(chunks[slot]?.slice(0, lengths[slot]) ?? lastBlock));
    else sink(packedChunks[slot]?.slice(0, packedLengths[slot]) ?? lastBlock);
    Atomics.store(states, slot, free);
  }

  #tell(): void {
    Atomics.add(this.#shared.changes, 0, 1);
    Atomics.notify(this.#shared.changes, 0);
  }
}

/** What the thread runs; as text, since the command line is one file. */
const threadSource = `
const { workerData } = require('node:worker_threads');
const { deflateRawSync } = require('node:zlib');
const { changes, ended, states, lengths, packedLengths, chunks, packedChunks, packing, marks, patience } = workerData;
let isAwake = true;
while (isAwake && Atomics.load(ended, 0) === 0) {
  const seen = Atomics.load(changes, 0);
  for (let slot = 0; slot < chunks.length; slot++) {
    if (Atomics.compareExchange(states, slot, marks.ready, marks.taken) !== marks.ready) continue;
    const done = deflateRawSync(chunks[slot].subarray(0, lengths[slot]), packing);
    packedChunks[slot].set(done);
    packedLengths[slot] = done.length;
    Atomics.store(states, slot, marks.packed);
    Atomics.notify(states, slot);
  }
  isAwake = Atomics.wait(changes, 0, seen, patience) !== 'timed-out';
}
`;
