/** Lets the page answer the user, or the grid calculate, before work goes on. */
export function pause(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
