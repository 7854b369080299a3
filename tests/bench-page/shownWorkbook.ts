import {
  contentTypes,
  declaration,
  mainNamespace,
  rels,
  relationshipNamespace,
  zipParts,
} from '../fixtures/workbooks/package.ts';

type Content = number | string | { readonly formula: string; readonly result?: number; readonly date?: true };

interface ShownSheet {
  readonly name: string;
  /** Cells from A1 on; a date is a number in a second look. */
  readonly rows: readonly (readonly (Content | null | { readonly date: number })[])[];
  /** Markup of `conditionalFormatting` elements. */
  readonly rules?: string;
  readonly table?: {
    readonly name: string;
    readonly area: string;
    readonly columns: readonly string[];
    readonly headerRow?: false;
    readonly totalsRow?: true;
  };
  readonly merges?: readonly string[];
}

export interface ShownBook {
  readonly sheets: readonly ShownSheet[];
  readonly date1904?: boolean;
  /** Markup of `definedName` elements. */
  readonly names?: string;
}

/** Fills of the differential formats 0, 1 and 2. */
export const shadeFills = ['FFC7CE', 'C6EFCE', '9DC3E6'] as const;

const dxfs = shadeFills.map(
  (fill) =>
    `<dxf><fill><patternFill patternType="solid"><bgColor rgb="FF${fill}"/></patternFill></fill></dxf>`,
);
const plain = 'fontId="0" fillId="0" borderId="0" xfId="0"';
const styles = `${declaration}<styleSheet xmlns="${mainNamespace}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" ${plain}/><xf numFmtId="14" ${plain} applyNumberFormat="1"/></cellXfs><dxfs count="${dxfs.length}">${dxfs.join('')}</dxfs></styleSheet>`;

function address(row: number, column: number): string {
  return `${String.fromCharCode(65 + column)}${row + 1}`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

function cell(content: ShownSheet['rows'][number][number], place: string): string {
  if (content === null) return '';
  if (typeof content === 'number') return `<c r="${place}"><v>${content}</v></c>`;
  if (typeof content === 'string')
    return `<c r="${place}" t="inlineStr"><is><t>${escaped(content)}</t></is></c>`;
  if ('formula' in content) {
    const look = content.date ? ' s="1"' : '';
    const result = content.result === undefined ? '' : `<v>${content.result}</v>`;
    return `<c r="${place}"${look}><f>${escaped(content.formula)}</f>${result}</c>`;
  }
  return `<c r="${place}" s="1"><v>${content.date}</v></c>`;
}

function sheetMarkup({ rows, rules = '', table, merges = [] }: ShownSheet): string {
  const data = rows.map(
    (cells, row) =>
      `<row r="${row + 1}">${cells.map((content, column) => cell(content, address(row, column))).join('')}</row>`,
  );
  const merged = merges.map((area) => `<mergeCell ref="${area}"/>`);
  return `${declaration}<worksheet xmlns="${mainNamespace}" xmlns:r="${relationshipNamespace}"><sheetData>${data.join('')}</sheetData>${merged.length > 0 ? `<mergeCells count="${merged.length}">${merged.join('')}</mergeCells>` : ''}${rules}${table ? '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>' : ''}</worksheet>`;
}

/** A workbook with what the grid shows beside cells: conditional formats, tables, names, merged cells, its date system. */
export function shownWorkbook({ sheets, date1904 = false, names = '' }: ShownBook): Uint8Array {
  const parts = sheets.flatMap((sheet, index): [string, string][] => {
    const { table } = sheet;
    const id = index + 1;
    const own: [string, string][] = [[`xl/worksheets/sheet${id}.xml`, sheetMarkup(sheet)]];
    if (!table) return own;
    const plain = table.headerRow === undefined && table.totalsRow === undefined;
    const filter = plain ? `<autoFilter ref="${table.area}"/>` : '';
    const unusual = `${table.headerRow === false ? ' headerRowCount="0"' : ''}${table.totalsRow ? ' totalsRowCount="1"' : ''}`;
    const columns = table.columns.map((name, at) => `<tableColumn id="${at + 1}" name="${name}"/>`).join('');
    return [
      ...own,
      [`xl/worksheets/_rels/sheet${id}.xml.rels`, rels([['table', `../tables/table${id}.xml`]])],
      [
        `xl/tables/table${id}.xml`,
        `${declaration}<table xmlns="${mainNamespace}" id="${id}" name="${table.name}" displayName="${table.name}" ref="${table.area}"${unusual}>${filter}<tableColumns count="${table.columns.length}">${columns}</tableColumns></table>`,
      ],
    ];
  });
  return zipParts({
    '[Content_Types].xml': contentTypes({}, [
      ['xl/workbook.xml', 'sheet.main'],
      ...parts
        .map(([name]) => name)
        .filter((name) => !name.endsWith('.rels'))
        .map((name): [string, string] => [name, name.includes('tables') ? 'table' : 'worksheet']),
      ['xl/styles.xml', 'styles'],
    ]),
    '_rels/.rels': rels([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `${declaration}<workbook xmlns="${mainNamespace}" xmlns:r="${relationshipNamespace}">${date1904 ? '<workbookPr date1904="1"/>' : ''}<sheets>${sheets
      .map(({ name }, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`)
      .join('')}</sheets>${names === '' ? '' : `<definedNames>${names}</definedNames>`}</workbook>`,
    'xl/_rels/workbook.xml.rels': rels([
      ...sheets.map((_, index): [string, string] => ['worksheet', `worksheets/sheet${index + 1}.xml`]),
      ['styles', 'styles.xml'],
    ]),
    'xl/styles.xml': styles,
    ...Object.fromEntries(parts),
  });
}
