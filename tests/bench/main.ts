export {};

/** All measurements, one after another: whole audits, calls of the worksheet functions, sizes of the add-in, the bench's page. */
await import('./workbooks.ts');
await import('./functions.ts');
await import('./sizes.ts');
await import('./page.ts');
