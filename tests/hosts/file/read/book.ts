import { strToU8, type Zippable, zipSync } from 'fflate';

/** The parts of a small workbook by name, each a text or bytes; tests change or drop parts before zipping. */
export type Parts = Record<string, string | Uint8Array>;

interface BookSheet {
  readonly name: string;
  /** What stands inside `<sheetData>`. */
  readonly data: string;
  /** What stands after `</sheetData>`. */
  readonly after?: string;
  readonly state?: string;
  /** `<table …/>` parts, in order. */
  readonly tables?: readonly string[];
}

export interface Book {
  readonly sheets: readonly BookSheet[];
  /** `<si>` elements. */
  readonly strings?: string;
  /** What stands inside `<styleSheet>`. */
  readonly styles?: string;
  /** Attributes of `<workbookPr>`. */
  readonly properties?: string;
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const documentLinks = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageLinks = 'http://schemas.openxmlformats.org/package/2006/relationships';
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export function links(...entries: readonly (readonly [id: string, kind: string, target: string])[]): string {
  const items = entries.map(
    ([id, kind, target]) => `<Relationship Id="${id}" Type="${documentLinks}/${kind}" Target="${target}"/>`,
  );
  return `${declaration}<Relationships xmlns="${packageLinks}">${items.join('')}</Relationships>`;
}

function contentTypes(sheets: readonly BookSheet[]): string {
  const kind = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const override = (part: string, type: string): string =>
    `<Override PartName="/xl/${part}" ContentType="${kind}.${type}+xml"/>`;
  return `${declaration}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${[
    override('workbook.xml', 'sheet.main'),
    override('sharedStrings.xml', 'sharedStrings'),
    override('styles.xml', 'styles'),
    ...sheets.flatMap(({ tables = [] }, index) => [
      override(`worksheets/sheet${index + 1}.xml`, 'worksheet'),
      ...tables.map((_, number) => override(`tables/table${index}-${number}.xml`, 'table')),
    ]),
  ].join('')}</Types>`;
}

/** The parts of a workbook as spreadsheet programs lay them out. */
export function bookParts({ sheets, strings, styles, properties = '' }: Book): Parts {
  const parts: Parts = {
    '[Content_Types].xml': contentTypes(sheets),
    '_rels/.rels': links(['rId1', 'officeDocument', 'xl/workbook.xml']),
    'xl/workbook.xml': `${declaration}<workbook xmlns="${main}" xmlns:r="${documentLinks}"><workbookPr ${properties}/><sheets>${sheets
      .map(
        ({ name, state }, index) =>
          `<sheet name="${name}" sheetId="${index + 1}"${state === undefined ? '' : ` state="${state}"`} r:id="rId${index + 1}"/>`,
      )
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': links(
      ...sheets.map(
        (_, index) => [`rId${index + 1}`, 'worksheet', `worksheets/sheet${index + 1}.xml`] as const,
      ),
      ['rIdStrings', 'sharedStrings', 'sharedStrings.xml'],
      ['rIdStyles', 'styles', 'styles.xml'],
    ),
    'xl/sharedStrings.xml': `${declaration}<sst xmlns="${main}">${strings ?? ''}</sst>`,
    'xl/styles.xml': `${declaration}<styleSheet xmlns="${main}">${styles ?? ''}</styleSheet>`,
  };
  sheets.forEach(({ data, after = '', tables = [] }, index) => {
    const file = `sheet${index + 1}.xml`;
    parts[`xl/worksheets/${file}`] =
      `${declaration}<worksheet xmlns="${main}"><sheetData>${data}</sheetData>${after}</worksheet>`;
    tables.forEach((table, number) => {
      parts[`xl/tables/table${index}-${number}.xml`] = `${declaration}${table}`;
    });
    if (tables.length > 0) {
      parts[`xl/worksheets/_rels/${file}.rels`] = links(
        ...tables.map(
          (_, number) => [`rId${number}`, 'table', `../tables/table${index}-${number}.xml`] as const,
        ),
      );
    }
  });
  return parts;
}

export function zip(parts: Parts): Uint8Array {
  const entries: Zippable = {};
  for (const [name, part] of Object.entries(parts)) {
    entries[name] = typeof part === 'string' ? strToU8(part) : part;
  }
  return zipSync(entries);
}

/** A workbook of one sheet called `S` with these rows. */
export function oneSheet(data: string, more: Partial<Book> & { after?: string } = {}): Uint8Array {
  const { after, ...book } = more;
  return zip(
    bookParts({ sheets: [{ name: 'S', data, ...(after === undefined ? {} : { after }) }], ...book }),
  );
}

/** Cell styles, numbered from 0, with these number format codes. */
export function stylesOf(codes: readonly string[]): string {
  const formats = codes.map(
    (code, index) =>
      `<numFmt numFmtId="${164 + index}" formatCode="${code.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')}"/>`,
  );
  const styles = codes.map(
    (_, index) => `<xf numFmtId="${164 + index}" fontId="0" fillId="0" borderId="0" xfId="0"/>`,
  );
  return (
    `<numFmts count="${codes.length}">${formats.join('')}</numFmts>` +
    '<fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders>' +
    `<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="${codes.length}">${styles.join('')}</cellXfs>`
  );
}
