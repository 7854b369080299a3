import { width } from '../sizes.ts';

/** Sizes of the panels in the drawing's own units. */
export const panelEdges = { left: 40, right: width - 8 } as const;
/** Room above a panel's scale for its title. */
export const panelHead = 20;
export const voltsHeight = 170;
export const lesserHeight = 100;
/** Between panels. */
export const panelGap = 8;
