import { channelFields, settingsFields, type Machine, type Written } from './records.ts';

/**
 * A machine from its text: its name on the first line, then under `Channel list` and `Monitor settings` a table each, whose
 * cells are parted by `|` and whose first line names the columns. What looks like a number is one, a blank cell is an empty
 * one, lines that begin with `#` are remarks. Throws a RangeError that names file, line and cell of what fits no table.
 */
export function readMachine(text: string, file: string): Machine {
  const lines = text.split(/\r?\n/u).map((line, index) => ({ line, number: index + 1 }));
  return {
    name: lines[0]?.line ?? '',
    channels: rows(tableBelow('Channel list', lines, file), channelFields, file),
    settings: rows(tableBelow('Monitor settings', lines, file), settingsFields, file),
  };
}

type Lines = readonly { readonly line: string; readonly number: number }[];

/** The lines from a title to the next blank one, without remarks. */
function tableBelow(title: string, lines: Lines, file: string): Lines {
  const at = lines.findIndex(({ line }) => line === title);
  if (at < 0) throw new RangeError(`${file} has no line "${title}"`);
  const below = lines.slice(at + 1);
  const end = below.findIndex(({ line }) => line.trim() === '');
  return below.slice(0, end < 0 ? below.length : end).filter(({ line }) => !line.startsWith('#'));
}

function rows<Field extends string>(
  [head, ...body]: Lines,
  known: readonly Field[],
  file: string,
): readonly Readonly<Partial<Record<Field, Written>>>[] {
  const fields = cellsOf(head?.line ?? '').map((wanted) => {
    const field = known.find((one) => one === wanted);
    if (field === undefined)
      throw new RangeError(
        `${file}, line ${head?.number ?? 0}: no column "${wanted}"; there are ${known.join(', ')}`,
      );
    return field;
  });
  return body.map(({ line, number }) => {
    const cells = cellsOf(line);
    if (cells.length > fields.length)
      throw new RangeError(
        `${file}, line ${number}: "${cells[fields.length] ?? ''}" stands right of the last column`,
      );
    const filled = fields.flatMap((field, index) => {
      const cell = cells[index] ?? '';
      return cell === '' ? [] : [[field, written(cell)] as const];
    });
    return Object.fromEntries(filled) as Partial<Record<Field, Written>>;
  });
}

function cellsOf(line: string): string[] {
  return line.split('|').map((cell) => cell.trim());
}

function written(cell: string): Written {
  return /^-?\d+(\.\d+)?$/u.test(cell) ? Number(cell) : cell;
}
