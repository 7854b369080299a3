/**
 * Adds the methods of iterators that the grid calls, where an older browser or Node 20 lacks them (ECMA-262, 16th edition, section
 * 27.1.4).
 */
export function addIteratorMethods(): void {
  const iterator = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]())) as object;
  const add = (
    name: string,
    method: (this: Iterable<unknown>, judge: (value: unknown) => unknown) => unknown,
  ) => {
    if (!(name in iterator)) {
      Object.defineProperty(iterator, name, { value: method, writable: true, configurable: true });
    }
  };
  add('some', function (judge) {
    return [...this].some(judge);
  });
  add('every', function (judge) {
    return [...this].every(judge);
  });
  add('find', function (judge) {
    return [...this].find(judge);
  });
  add('forEach', function (judge) {
    [...this].forEach(judge);
  });
  add('map', function (judge) {
    return [...this].map(judge).values();
  });
  add('filter', function (judge) {
    return [...this].filter(judge).values();
  });
  add('toArray', function () {
    return [...this];
  });
}
