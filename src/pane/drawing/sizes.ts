/** Sizes of the drawing in its own units; it is as wide as the narrowest pane and grows with it. */
export const width = 296;
export const edges = { left: 10, right: width - 10 } as const;
export const laneHeight = 56;
export const headHeight = 18;
export const axisHeight = 34;
export const footHeight = 16;
