/** Row of the budget's headers. */
export const headerRow = 5;
/** Rows of its parts. */
export const budgetRows = { first: 6, last: 15 } as const;
/** Row of the level of confidence, an input. */
export const levelRow = 17;
/** Rows of what follows from the parts, all in column E. */
export const resultRow = { standard: 18, freedom: 19, factor: 20, expanded: 21 } as const;
