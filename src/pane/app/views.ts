/** The views of the pane, in the order of their tabs. */
export const viewIds = ['quick', 'audit', 'care'] as const;
export type ViewId = (typeof viewIds)[number];
