import type { MappedTable } from '../../../audit/model/columnMap.ts';
import { mappedTableOfLane } from '../../../audit/read/understand/answers/places.ts';
import type { Field } from '../../../audit/read/understand/fields/field.ts';
import { optionOf } from '../../../audit/read/understand/questions/fieldQuestions.ts';
import type { FieldOption } from '../../../audit/read/understand/questions/question.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { CellPlace, SheetArea } from '../../../hosts/port/port.ts';

/** The table that an answer is about; `undefined` where it is not there. */
export function tableNamed(
  said: MappedTable | undefined,
  tables: readonly TableRead[],
): TableRead | undefined {
  if (!said) return undefined;
  return tables.find(({ lane }) => {
    const own = mappedTableOfLane(lane);
    return (
      own.sheet === said.sheet &&
      own.header === said.header &&
      own.lies === said.lies &&
      own.probe === said.probe
    );
  });
}

/** The field that an option shows. */
export function fieldOf(option: FieldOption, tables: readonly TableRead[]): Field | undefined {
  const isSame = (field: Field): boolean => {
    const { sheet, place } = optionOf(field);
    return sheet === option.sheet && place.row === option.place.row && place.column === option.place.column;
  };
  for (const { lane } of tables) {
    const found = lane.fields.find(isSame);
    if (found) return found;
  }
  return undefined;
}

/** The cells of a field from its header to its last record; of forms the first label alone. */
export function areaOfField(field: Field): SheetArea {
  const { sheet, lies, span } = field.block;
  const { row, column } = optionOf(field).place;
  const last = { rows: [span[1], column], columns: [row, span[1]], forms: [row, column] } as const;
  const [bottom, right] = last[lies];
  return {
    sheet: sheet.name,
    area: { top: row, left: column, bottom: Math.max(row, bottom), right: Math.max(column, right) },
  };
}

/** One cell as an area. */
export function areaOfCell({ sheet, row, column }: CellPlace): SheetArea {
  return { sheet, area: { top: row, left: column, bottom: row, right: column } };
}

/** All cells of a table from its headers to its last record. */
export function areaOfTable({ lane: { block, fields } }: TableRead): SheetArea | null {
  const areas = fields.map((field) => areaOfField(field).area);
  const [first] = areas;
  if (!first) return null;
  const area = areas.reduce((whole, one) => ({
    top: Math.min(whole.top, one.top),
    left: Math.min(whole.left, one.left),
    bottom: Math.max(whole.bottom, one.bottom),
    right: Math.max(whole.right, one.right),
  }));
  return { sheet: block.sheet.name, area };
}

/** The field of a table on which a cell lies, its header included; `undefined` where it lies on none. */
export function fieldAt({ lane }: TableRead, sheet: string, row: number, column: number): Field | undefined {
  const { block, fields } = lane;
  const { lies, header, span } = block;
  if (block.sheet.name !== sheet) return undefined;
  if (lies === 'forms') {
    const holds = (at: number): boolean =>
      block.forms.some((form) => form.get(at)?.row === row && form.get(at)?.column === column);
    return fields.find(
      ({ place }) =>
        holds(place.at) || place.header.some((part) => part.row === row && part.column === column),
    );
  }
  const [along, across] = lies === 'rows' ? [row, column] : [column, row];
  if (along < header[0] || along > span[1]) return undefined;
  return fields.find(({ place }) => place.at === across);
}
