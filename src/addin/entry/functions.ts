import { type CustomFunctionsLike, associateAll } from '../../functions/excel/associate.ts';

declare global {
  var CustomFunctions: CustomFunctionsLike | undefined;
}

// Runs right behind Office.js and before anything of the pane, so that functions calculate even where the pane fails.
if (globalThis.CustomFunctions !== undefined) associateAll(globalThis.CustomFunctions);
