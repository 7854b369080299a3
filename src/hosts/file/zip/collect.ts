/** A place for bytes that come in pieces. */
export interface Collected {
  readonly sink: (piece: Uint8Array) => void;
  /** All pieces so far, as one. */
  readonly bytes: () => Uint8Array;
}

/** Collects pieces in memory, for hosts that have no file to write them to. */
export function collect(): Collected {
  const pieces: Uint8Array[] = [];
  let length = 0;
  return {
    sink(piece) {
      pieces.push(piece);
      length += piece.length;
    },
    bytes() {
      const whole = new Uint8Array(length);
      let at = 0;
      for (const piece of pieces) {
        whole.set(piece, at);
        at += piece.length;
      }
      return whole;
    },
  };
}
