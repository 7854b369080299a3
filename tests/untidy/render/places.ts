import type { Meaning } from '../draft.ts';
import type { Channel } from '../scenario.ts';
import type { ChannelPlace } from '../truth.ts';

/** Where the tables came to stand. */
export interface Placed {
  readonly channels: { readonly channel: Channel; readonly place: ChannelPlace }[];
  readonly fields: {
    readonly meaning: Meaning;
    readonly sheet: string;
    readonly column?: string;
    readonly row?: number;
    readonly header: string;
  }[];
  /** Last row and column taken. */
  bottom: number;
  right: number;
}

export function nothingPlaced(): Placed {
  return { channels: [], fields: [], bottom: 0, right: 0 };
}
