import examples from './examples.json' with { type: 'json' };

/** A figure that was worked by hand and by simulation, independent of this code; published ones name their source. */
export interface Worked {
  readonly id: string;
  readonly what: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly recomputed?: Readonly<Record<string, unknown>>;
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
}

export const worked = examples as unknown as readonly Worked[];
