import type { SheetModel } from '../../sheets/model.ts';
import type { Copied, ModelHead, ToWorker } from './messages.ts';
import type { CopyOrder } from './patchedCopy.ts';
import { inWorker } from './inWorker.ts';
import { rowPieces } from './rowPieces.ts';

/** As `patchedCopy`, while the page stays alive. */
export function copyInWorker(order: CopyOrder): Promise<Copied> {
  return inWorker('copied', messages(order));
}

function* messages({ original, edits, added, share }: CopyOrder): Generator<ToWorker, void> {
  let pieces = 0;
  for (const [index, { model }] of added.entries()) {
    for (const piece of rowPieces(index, model.rows())) {
      yield piece;
      pieces++;
    }
  }
  yield {
    kind: 'copy',
    original,
    edits,
    pieces,
    ...(share && { share }),
    added: added.map(({ model, beyondModel }) => ({ head: headOf(model), beyondModel })),
  };
}

function headOf(model: SheetModel): ModelHead {
  return Object.fromEntries(
    Object.entries(model).filter(([part]) => part !== 'rows'),
  ) as unknown as ModelHead;
}
