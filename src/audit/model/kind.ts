/** Kinds of channel that a rack has; see `method` for how each is evaluated. */
export const kinds = ['radial', 'axial', 'velocity', 'acceleration', 'loop'] as const;
export type Kind = (typeof kinds)[number];
