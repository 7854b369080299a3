/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
