/** Row of the headers of the results sheet, below which the first threshold stands. */
export const headerRow = 6;
