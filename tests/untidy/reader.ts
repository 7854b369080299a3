import { audited, type Reader } from './audited.ts';

/** The reader under examination. */
export const reader: Reader = audited;

/**
 * Whether the reader has to pass: then nothing may be silently wrong, every guard has to hold, and what is inferred has
 * to be said. While it knows only headers of its own, the examination runs and is counted, but decides nothing.
 */
export const hasToPass: boolean = true;
