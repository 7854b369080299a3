import { type CustomFunctionsLike, associateAll } from '../functions/excel/associate.ts';
import { CALLED, type OfficeCommands, type PanePage, registerCommands } from './commands.ts';

/** What Office.js, loaded just before, leaves in the page. */
interface OfficePage {
  readonly CustomFunctions?: CustomFunctionsLike;
  readonly Office?: OfficeCommands;
  readonly document?: PanePage;
}

// Runs right behind Office.js and before anything of the pane, so that functions calculate even where the pane fails.
const { CustomFunctions, Office, document } = globalThis as OfficePage;
if (CustomFunctions !== undefined) {
  associateAll(CustomFunctions, () => {
    if (document !== undefined) document.documentElement.dataset[CALLED] = 'yes';
  });
}
if (Office !== undefined && document !== undefined) registerCommands(Office, document);
