import type { Area } from '../../../cells/sheet.ts';
import { HostRefused } from '../../port/port.ts';
import { isTooLarge } from '../refusal.ts';

/** Some rows of the used area of a sheet, both ends counted from 1. */
export interface Piece<S extends UsedSheet = UsedSheet> {
  readonly sheet: S;
  readonly top: number;
  readonly bottom: number;
}

export interface UsedSheet {
  readonly sheet: Excel.Worksheet;
  readonly name: string;
  readonly used: Area;
}

/**
 * Cells asked for in one round trip. Excel on the web hands over 5 MB; a cell with its value, type and number format takes
 * some 30 bytes. Where that was too much after all, less is asked for.
 */
const cellsPerTrip = 120_000;

/** Cuts the used areas into as few trips as they fit into, several small sheets to a trip. */
export function tripsOf<S extends UsedSheet>(sheets: readonly S[], most = cellsPerTrip): Piece<S>[][] {
  const trips: Piece<S>[][] = [[]];
  let room = most;
  for (const sheet of sheets) {
    const columns = sheet.used.right - sheet.used.left + 1;
    for (let top = sheet.used.top; top <= sheet.used.bottom;) {
      if (room < columns && room < most) {
        trips.push([]);
        room = most;
      }
      const rows = Math.max(1, Math.floor(room / columns));
      const bottom = Math.min(sheet.used.bottom, top + rows - 1);
      trips.at(-1)?.push({ sheet, top, bottom });
      room -= (bottom - top + 1) * columns;
      top = bottom + 1;
    }
  }
  return trips;
}

/** Asks for the cells of a piece; the function it returns takes what came, or `null` where Excel left it out as too much. */
export type AskFor<T, S extends UsedSheet> = (range: Excel.Range, piece: Piece<S>) => () => T | null;

/**
 * Reads pieces in one round trip, or in several smaller ones where Excel finds it too much. Hands each piece's answer to
 * `take`. Throws HostRefused where even a single row is too much.
 */
export async function readPieces<T, S extends UsedSheet>(
  context: Excel.RequestContext,
  pieces: readonly Piece<S>[],
  ask: AskFor<T, S>,
  take: (piece: Piece<S>, answer: T) => void,
): Promise<void> {
  const answers = await answersTo(context, pieces, ask);
  if (answers !== null) {
    for (const [piece, answer] of answers) take(piece, answer);
    return;
  }
  for (const half of halves(pieces)) await readPieces(context, half, ask, take);
}

/** The range of a piece on its sheet. */
export function rangeOf({ sheet, top, bottom }: Piece): Excel.Range {
  const { left, right } = sheet.used;
  return sheet.sheet.getRangeByIndexes(top - 1, left - 1, bottom - top + 1, right - left + 1);
}

async function answersTo<T, S extends UsedSheet>(
  context: Excel.RequestContext,
  pieces: readonly Piece<S>[],
  ask: AskFor<T, S>,
): Promise<[Piece<S>, T][] | null> {
  const asked = pieces.map((piece): [Piece<S>, () => T | null] => [piece, ask(rangeOf(piece), piece)]);
  try {
    await context.sync();
  } catch (error) {
    if (isTooLarge(error)) return null;
    throw error;
  }
  const answers: [Piece<S>, T][] = [];
  for (const [piece, answerOf] of asked) {
    const answer = answerOf();
    if (answer === null) return null;
    answers.push([piece, answer]);
  }
  return answers;
}

function halves<P extends Piece>(pieces: readonly P[]): P[][] {
  const [first] = pieces;
  if (first === undefined) return [];
  if (pieces.length > 1) {
    const middle = Math.ceil(pieces.length / 2);
    return [pieces.slice(0, middle), pieces.slice(middle)];
  }
  if (first.top === first.bottom) {
    throw new HostRefused(
      `Sheet “${first.sheet.name}” could not be read. Row ${first.top} holds more text than Excel hands over at once. Shorten its texts, then try again.`,
    );
  }
  const middle = Math.floor((first.top + first.bottom) / 2);
  return [[{ ...first, bottom: middle }], [{ ...first, top: middle + 1 }]];
}
