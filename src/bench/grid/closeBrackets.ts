import type { Injector } from '@univerjs/core';
import { LexerTreeBuilder } from '@univerjs/engine-formula';

/** What the grid's reader of formulas keeps to itself of the formula it reads. */
interface ReaderState {
  _resetTemp: () => void;
  _squareBracketState: number;
  _tableBracketState: boolean;
}

/**
 * Has the grid read each formula with no square bracket open. Its reader also reads what is being typed, as far as it goes,
 * and forgets all of that before the next formula but an open square bracket: from then on it would see no range in any
 * formula, and no reference to move with inserted rows. It reaches into version 0.25.1 of the engine.
 */
export function closeBrackets(injector: Injector): void {
  const reader = injector.get(LexerTreeBuilder) as unknown as ReaderState;
  const reset = reader._resetTemp.bind(reader);
  reader._resetTemp = () => {
    reset();
    reader._squareBracketState = 0;
    reader._tableBracketState = false;
  };
}
