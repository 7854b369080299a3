import {
  contentTypes,
  declaration,
  mainNamespace,
  rels,
  relationshipNamespace,
} from '../fixtures/workbooks/package.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';

const our = (name: string, ...given: string[]): string => `_xldudf_TRIPDRIFT_${name}(${given.join(',')})`;
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A cell with a formula as files store it. Values are worked out by hand beside it. */
function formula(ref: string, stored: string, value: number | string | null, attributes = ''): string {
  const f = `<f${attributes}>${escaped(stored)}</f>`;
  if (value === null) return `<c r="${ref}">${f}</c>`;
  if (typeof value === 'number') return `<c r="${ref}">${f}<v>${value}</v></c>`;
  return `<c r="${ref}" t="${value.startsWith('#') ? 'e' : 'str'}">${f}<v>${escaped(value)}</v></c>`;
}

function value(ref: string, given: number | string): string {
  return typeof given === 'number'
    ? `<c r="${ref}"><v>${given}</v></c>`
    : `<c r="${ref}" t="inlineStr"><is><t>${escaped(given)}</t></is></c>`;
}

const row = (number: number, ...cells: string[]): string => `<row r="${number}">${cells.join('')}</row>`;

/** Channels: setpoint, configured, measured in A to C of rows 2 to 4; formulas beside and below. */
const channelRows = [
  row(1, value('A1', 'Setpoint'), value('B1', 'Configured'), value('C1', 'Measured')),
  row(
    2,
    ...[value('A2', 5), value('B2', 200), value('C2', 160), value('D2', ' Toward')],
    // 5·200/160, 8·200/250, 10·200/200: one formula that three cells share.
    formula('E2', our('EFFECTIVE', 'A2', 'B2', 'C2'), 6.25, ' t="shared" ref="E2:E4" si="0"'),
    // The same less the setpoint.
    formula('F2', our('SHIFT', 'A2:A4', 'B2:B4', 'C2:C4'), 1.25, ' t="array" ref="F2:F4"'),
    // 6.25/1.25 and 6.25/0.75.
    formula('G2', our('BAND', 'A2', 'B2', 'C2', '0.25'), 5, ' t="array" ref="G2:H2"'),
    value('H2', 25 / 3),
    // 6.25 mil are 158.75 µm; boundaries at 3600 r/min are 80, 150 and 220 µm.
    formula('I2', `IF(A2>1,${our('ZONE', 'E2', '3600', '"mil"')},"no ""x""")`, 'C'),
  ),
  row(
    3,
    ...[value('A3', 8), value('B3', 200), value('C3', 250)],
    formula('E3', '', 6.4, ' t="shared" si="0"'),
    value('F3', -1.6),
    // 1 + 2·6.25
    formula('G3', `1+${our('EFFECTIVE', '5', '200', '160')}*2`, 13.5),
    formula('H3', `IF(A9="","",${our('EFFECTIVE', 'A9', 'B2', 'C2')})`, ''),
    // 6.25·200/160
    formula('I3', our('EFFECTIVE', our('EFFECTIVE', 'A2', 'B2', 'C2'), 'B2', 'C2'), 7.8125),
  ),
  row(
    4,
    ...[value('A4', 10), value('B4', 200), value('C4', 200)],
    formula('E4', '', 10, ' t="shared" si="0"'),
    value('F4', 0),
    formula('G4', 'SUM(_xlfn.ANCHORARRAY(F2))', -0.35),
    formula('H4', our('EFFECTIVE', 'Setpoint_1', '200', '160'), 6.25),
    // (20·200 + (−10 + 10.5)·1000)/160
    formula('I4', our('AXIALEFFECTIVE', '20', '200', 'C2', '-10', '-10.5', 'D2'), 28.125),
  ),
  row(
    6,
    // The example of a least-squares line: see the examples of the functions.
    formula('A6', our('FIT', '{16,32,48,64}', '{-4,-8,-10,-14}'), 200, ' t="array" ref="A6:G6"'),
    ...[17.67766952966368, -1, 0.7745966692414831, 0.9128709291752769, 0.6324555320336757, 4].map(
      (one, index) => value(`${'BCDEFG'.charAt(index)}6`, one),
    ),
    formula('H6', 'OurName*2', 12.5),
  ),
  row(
    7,
    value('A7', 'not a number'),
    formula('B7', our('EFFECTIVE', 'A7', 'B2', 'C2'), '#VALUE!'),
    // 5 in a text counts in a single cell, which no native formula does.
    value('C7', '5'),
    formula('D7', our('EFFECTIVE', 'C7', 'B2', 'C2'), 6.25),
    // 5·157/200 = 3.925, down to a step of 0.1
    formula('E7', our('INTERIMSETPOINT', '5', '200', '157', '0.1'), 3.9),
    formula('F7', our('LATEBY', 'A2', 'E2', '0.5'), 2.5),
    // A bracketed difference: 8 − (2 − 1) = 7; 7·200/160.
    formula('G7', our('EFFECTIVE', '8-(2-1)', 'B2', '(C2)'), 8.75),
    // 4800/√3600 = 80 µm in mil
    formula('H7', our('ZONELIMIT', '"a/b"', '3600', '"mil"'), 80 / 25.4),
  ),
  row(
    8,
    // The file was last saved without the functions: 5·160/200 = 4, and 4·200/160 = 5 of it.
    formula('A8', our('INDICATED', '5', '200', '160'), '#NAME?'),
    formula('B8', our('ACTUAL', 'A8', 'B2', 'C2'), '#NAME?'),
    formula('C8', our('EFFECTIVE', 'A2+0', 'B2', 'C2'), null),
  ),
].join('');

const otherRows = [
  row(1, value('A1', 'Set'), value('B1', 'Acts at')),
  row(
    2,
    value('A2', 4),
    formula('B2', our('EFFECTIVE', 'Limits[[#This Row],[Set]]', 'Channels!$B$2', 'Channels!C$2'), 5),
  ),
  row(
    3,
    value('A3', 8),
    formula('B3', our('EFFECTIVE', 'Limits[[#This Row],[Set]]', 'Channels!$B$2', 'Channels!C$2'), 10),
  ),
  row(
    5,
    formula('A5', 'TRIPDRIFT.EFFECTIVE(A2,\'Channels\'!B2,Channels!C2)&"TRIPDRIFT.X("', '5TRIPDRIFT.X('),
  ),
].join('');

const comments = `${declaration}<comments xmlns="${mainNamespace}"><authors><author>someone</author></authors><commentList><comment ref="G3" authorId="0"><text><t>Seen in March</t></text></comment><comment ref="A1" authorId="0"><text><r><t>Head</t></r></text></comment></commentList></comments>`;

const box = (id: number, at: string): string =>
  `<v:shape id="_x0000_s${id}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:path o:connecttype="none"/><v:textbox/><x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>3, 15, 1, 10, 5, 15, 4, 4</x:Anchor><x:AutoFill>False</x:AutoFill>${at}</x:ClientData></v:shape>`;

const boxes = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout><v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>${box(1025, '<x:Row>2</x:Row><x:Column>6</x:Column>')}${box(1026, '<x:Row>0</x:Row><x:Column>0</x:Column>')}</xml>`;

const rules = `<conditionalFormatting sqref="E2:E4"><cfRule type="expression" priority="1"><formula>${our('EFFECTIVE', 'A2', '200', '160')}&gt;6</formula></cfRule></conditionalFormatting><conditionalFormatting sqref="A2:A4"><cfRule type="cellIs" priority="2" operator="lessThan"><formula>1</formula></cfRule><cfRule type="expression" priority="3"><formula>OurName&gt;6</formula></cfRule></conditionalFormatting>`;
const validations = `<dataValidations count="2"><dataValidation type="decimal" operator="lessThan" sqref="A2:A4"><formula1>${our('EFFECTIVE', '5', '200', '160')}</formula1></dataValidation><dataValidation type="list" sqref="D2"><formula1>"toward,away"</formula1></dataValidation></dataValidations>`;

const main = `xmlns="${mainNamespace}" xmlns:r="${relationshipNamespace}"`;

/** A workbook with our functions wherever a workbook can have them. */
export function sharedBook({
  date1904 = false,
  protectedSheet = false,
  rows = channelRows,
} = {}): Uint8Array {
  const protection = protectedSheet ? '<sheetProtection sheet="1" objects="1" scenarios="1"/>' : '';
  return zipParts({
    '[Content_Types].xml': contentTypes({ vml: 'application/vnd.openxmlformats-officedocument.vmlDrawing' }, [
      ['xl/workbook.xml', 'sheet.main'],
      ['xl/worksheets/sheet1.xml', 'worksheet'],
      ['xl/worksheets/sheet2.xml', 'worksheet'],
      ['xl/comments1.xml', 'comments'],
      ['xl/tables/table1.xml', 'table'],
    ]),
    '_rels/.rels': rels([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `${declaration}<workbook ${main}><workbookPr${date1904 ? ' date1904="1"' : ''}/><sheets><sheet name="Channels" sheetId="1" r:id="rId1"/><sheet name="It's &amp; more" sheetId="2" r:id="rId2"/></sheets><definedNames><definedName name="OurName">${our('EFFECTIVE', 'Channels!$A$2', '200', '160')}</definedName><definedName name="Setpoint_1">Channels!$A$2</definedName></definedNames></workbook>`,
    'xl/_rels/workbook.xml.rels': rels([
      ['worksheet', 'worksheets/sheet1.xml'],
      ['worksheet', 'worksheets/sheet2.xml'],
    ]),
    'xl/worksheets/sheet1.xml': `${declaration}<worksheet ${main}><sheetData>${rows}</sheetData>${protection}${rules}${validations}<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><legacyDrawing r:id="rId2"/></worksheet>`,
    'xl/worksheets/_rels/sheet1.xml.rels': rels([
      ['comments', '../comments1.xml'],
      ['vmlDrawing', '../drawings/vmlDrawing1.vml'],
    ]),
    'xl/comments1.xml': comments,
    'xl/drawings/vmlDrawing1.vml': boxes,
    'xl/worksheets/sheet2.xml': `${declaration}<worksheet ${main}><sheetData>${otherRows}</sheetData><tableParts count="1"><tablePart r:id="rId1"/></tableParts></worksheet>`,
    'xl/worksheets/_rels/sheet2.xml.rels': rels([['table', '../tables/table1.xml']]),
    'xl/tables/table1.xml': `${declaration}<table xmlns="${mainNamespace}" id="1" name="Limits" displayName="Limits" ref="A1:B3" totalsRowShown="0"><autoFilter ref="A1:B3"/><tableColumns count="2"><tableColumn id="1" name="Set"/><tableColumn id="2" name="Acts at"><calculatedColumnFormula>${our('EFFECTIVE', 'Limits[[#This Row],[Set]]', 'Channels!$B$2', 'Channels!C$2')}</calculatedColumnFormula></tableColumn></tableColumns></table>`,
  });
}

/** What cells whose result was not stored show, worked out by hand in the fixture. */
export const workedOut: Readonly<Record<string, number>> = { A8: 4, B8: 5, C8: 6.25 };
