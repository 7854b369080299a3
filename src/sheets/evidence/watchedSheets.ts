import { finish } from '../../audit/model/steps.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { titleIn } from '../titles.ts';
import { modelFingerprint, SheetHash, storedRow, type SheetFingerprints } from './resultsFingerprint.ts';

/** Sheets that take their own fingerprints while their rows are made. */
export interface WatchedSheets {
  readonly models: readonly SheetModel[];
  /** Those of all sheets; only a sheet whose rows were not made to the end has them made for it. */
  readonly fingerprints: () => SheetFingerprints;
}

/** The same sheets, so that rows that are written need not be made once more for their fingerprints. */
export function watchedSheets(models: readonly SheetModel[]): WatchedSheets {
  const known = new Map<SheetModel, string>();
  return {
    models: models.map((model) => ({ ...model, rows: () => hashing(model, known) })),
    fingerprints: () => {
      const sheets: Record<string, string> = {};
      for (const model of models) {
        const hash = known.get(model) ?? finish(modelFingerprint(model));
        known.set(model, hash);
        sheets[titleIn(model)] = hash;
      }
      return sheets;
    },
  };
}

function* hashing(model: SheetModel, known: Map<SheetModel, string>): Generator<ModelRow> {
  if (known.has(model)) {
    yield* model.rows();
    return;
  }
  const hash = new SheetHash();
  for (const row of model.rows()) {
    hash.add(storedRow(row.cells));
    yield row;
  }
  known.set(model, hash.hex());
}
