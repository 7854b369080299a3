import type { Guard } from './guard.ts';
import { headerGuards } from './headers.ts';
import { hiddenGuards } from './hidden.ts';
import { listGuards } from './lists.ts';
import { plantGuards } from './plants.ts';

/** Each trap that was seen to give a late trip as within, or to lose a channel. */
export const guards: readonly Guard[] = [...hiddenGuards, ...headerGuards, ...listGuards, ...plantGuards];
