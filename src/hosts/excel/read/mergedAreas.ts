import type { Area } from '../../../cells/sheet.ts';
import { codeOf } from '../refusal.ts';
import { areaOf, placeProperties, type SheetOutline } from './outline.ts';
import { type Piece, rangeOf } from './pieces.ts';

/** Excel fails where a range has more than 512 merged areas (public reference), so crowded sheets are asked in ever smaller blocks of rows. */
const blockHeights = [512, 64, 8];
const smallestBlock = 2;

/**
 * Merged areas of each sheet's used area, by sheet name and from top to bottom; one round trip unless a sheet has very many.
 * A merge may come in parts that share a row. Needs ExcelApi 1.13.
 */
export async function readMergedAreas(
  context: Excel.RequestContext,
  sheets: readonly SheetOutline[],
): Promise<Map<string, Area[]>> {
  const together = await mergesOrTooMany(context, sheets.map(whole));
  if (together !== null) return grouped(together);
  const found = new Map<string, Area[]>();
  for (const sheet of sheets) {
    found.set(sheet.name, await mergesOfSheet(context, sheet));
  }
  return found;
}

async function mergesOfSheet(context: Excel.RequestContext, sheet: SheetOutline): Promise<Area[]> {
  for (const height of blockHeights) {
    const merges = await mergesOrTooMany(context, blocks(sheet, height));
    if (merges !== null) return merges.map(({ area }) => area);
  }
  const merges = await mergesOf(context, blocks(sheet, smallestBlock));
  return merges.map(({ area }) => area);
}

interface Merge {
  readonly sheet: string;
  readonly area: Area;
}

/** `null` where Excel refuses, most likely because there are too many. */
async function mergesOrTooMany(
  context: Excel.RequestContext,
  pieces: readonly Piece<SheetOutline>[],
): Promise<Merge[] | null> {
  try {
    return await mergesOf(context, pieces);
  } catch (error) {
    if (codeOf(error) === undefined) throw error;
    return null;
  }
}

async function mergesOf(
  context: Excel.RequestContext,
  pieces: readonly Piece<SheetOutline>[],
): Promise<Merge[]> {
  const asked = pieces.map((piece) => {
    const merged = rangeOf(piece).getMergedAreasOrNullObject();
    merged.load('areaCount');
    merged.areas.load(placeProperties.replaceAll(/\w+/g, 'items/$&'));
    return { sheet: piece.sheet.name, merged };
  });
  await context.sync();
  return asked.flatMap(({ sheet, merged }) =>
    merged.isNullObject ? [] : merged.areas.items.map((range) => ({ sheet, area: areaOf(range) })),
  );
}

function whole(sheet: SheetOutline): Piece<SheetOutline> {
  return { sheet, top: sheet.used.top, bottom: sheet.used.bottom };
}

/** Blocks share a row with the next one, so that the value of a merge across their border is handed on from part to part. */
function blocks(sheet: SheetOutline, height: number): Piece<SheetOutline>[] {
  const { top: first, bottom: last } = sheet.used;
  const pieces: Piece<SheetOutline>[] = [];
  for (let top = first; top === first || top < last; top += height - 1) {
    pieces.push({ sheet, top, bottom: Math.min(last, top + height - 1) });
  }
  return pieces;
}

function grouped(merges: readonly Merge[]): Map<string, Area[]> {
  const bySheet = new Map<string, Area[]>();
  for (const { sheet, area } of merges) {
    const areas = bySheet.get(sheet) ?? [];
    bySheet.set(sheet, areas);
    areas.push(area);
  }
  return bySheet;
}
