/** Standard normals by Box and Muller over a 32-bit generator (mulberry32): plain sampling that can be repeated. */
export function normals(start: number): () => number {
  let state = start;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const one = spare;
      spare = undefined;
      return one;
    }
    const [size, angle] = [Math.sqrt(-2 * Math.log(uniform())), 2 * Math.PI * uniform()];
    spare = size * Math.sin(angle);
    return size * Math.cos(angle);
  };
}
