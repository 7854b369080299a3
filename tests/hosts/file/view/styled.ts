import {
  contentTypes,
  declaration,
  mainNamespace,
  rels,
  relationshipNamespace,
  zipParts,
} from '../../../fixtures/workbooks/package.ts';

const colours: readonly (readonly [string, string])[] = [
  ['dk1', '<a:sysClr val="windowText" lastClr="000000"/>'],
  ['lt1', '<a:sysClr val="window" lastClr="FFFFFF"/>'],
  ...[
    'dk2 44546A',
    'lt2 E7E6E6',
    'accent1 4472C4',
    'accent2 ED7D31',
    'accent3 A5A5A5',
    'accent4 FFC000',
    'accent5 5B9BD5',
    'accent6 70AD47',
    'hlink 0563C1',
    'folHlink 954F72',
  ].map((entry): [string, string] => [
    entry.split(' ')[0] ?? '',
    `<a:srgbClr val="${entry.split(' ')[1] ?? ''}"/>`,
  ]),
];
const fontScheme = ['majorFont', 'minorFont']
  .map((name) => `<a:${name}><a:latin typeface="Calibri"/><a:ea typeface=""/><a:cs typeface=""/></a:${name}>`)
  .join('');
const flat = '<a:solidFill><a:schemeClr val="phClr"/></a:solidFill>'.repeat(3);
const line = `<a:ln w="6350"><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:ln>`.repeat(3);
const effect = '<a:effectStyle><a:effectLst/></a:effectStyle>'.repeat(3);
const theme = `${declaration}<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" name="Plain"><a:themeElements><a:clrScheme name="Plain">${colours.map(([name, inner]) => `<a:${name}>${inner}</a:${name}>`).join('')}</a:clrScheme><a:fontScheme name="Plain">${fontScheme}</a:fontScheme><a:fmtScheme name="Plain"><a:fillStyleLst>${flat}</a:fillStyleLst><a:lnStyleLst>${line}</a:lnStyleLst><a:effectStyleLst>${effect}</a:effectStyleLst><a:bgFillStyleLst>${flat}</a:bgFillStyleLst></a:fmtScheme></a:themeElements></a:theme>`;

/** Fill colours by markup: themes with and without tint, plain, indexed. */
const fills = [
  'theme="4" tint="0.79998168889431442"',
  'theme="4" tint="0.39997558519241921"',
  'theme="4" tint="-0.249977111117893"',
  'theme="9" tint="-0.499984740745262"',
  'theme="0" tint="-0.14999847407452621"',
  'theme="5"',
  'theme="3"',
  'rgb="FF123456"',
  'indexed="13"',
  'indexed="44"',
];

const xf = (attributes: string, alignment = ''): string =>
  `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" ${attributes}${alignment === '' ? '/>' : `>${alignment}</xf>`}`;

const styles = `${declaration}<styleSheet xmlns="${mainNamespace}"><numFmts count="1"><numFmt numFmtId="170" formatCode="0.0&quot; mV&quot;"/></numFmts><fonts count="3"><font><sz val="10"/><color theme="1"/><name val="Arial"/></font><font><b/><i/><u/><sz val="14"/><color theme="8" tint="-0.249977111117893"/><name val="Arial"/></font><font><b val="0"/><strike/><sz val="10"/><color rgb="FFFF0000"/><name val="Arial"/></font></fonts><fills count="${fills.length + 2}"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>${fills.map((colour) => `<fill><patternFill patternType="solid"><fgColor ${colour}/><bgColor indexed="64"/></patternFill></fill>`).join('')}</fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="${fills.length + 6}">${[
  xf(''),
  xf('').replace('numFmtId="0" fontId="0"', 'numFmtId="170" fontId="1" applyNumberFormat="1" applyFont="1"'),
  xf('').replace('fontId="0"', 'fontId="2" applyFont="1"'),
  xf('applyAlignment="1"', '<alignment horizontal="center" vertical="top" wrapText="1"/>'),
  xf('applyAlignment="1"', '<alignment horizontal="right" vertical="center"/>'),
  xf('').replace('numFmtId="0"', 'numFmtId="10" applyNumberFormat="1"'),
  ...fills.map((_, index) => xf('').replace('fillId="0"', `fillId="${index + 2}" applyFill="1"`)),
].join('')}</cellXfs></styleSheet>`;

const filled = fills.map(
  (_, index) => `<c r="${String.fromCharCode(65 + index)}8" s="${index + 6}"><v>${index}</v></c>`,
);

const sheet = `${declaration}<worksheet xmlns="${mainNamespace}"><sheetViews><sheetView workbookViewId="0"><pane xSplit="1" ySplit="2" topLeftCell="B3" activePane="bottomRight" state="frozen"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/><cols><col min="2" max="3" width="20.7109375" customWidth="1"/><col min="5" max="5" width="9.140625" hidden="1" customWidth="1"/></cols><sheetData><row r="1"><c r="A1" s="1"><v>1.5</v></c><c r="B1" s="2" t="inlineStr"><is><t>struck</t></is></c><c r="C1" s="3" t="b"><v>1</v></c><c r="D1" s="4" t="e"><v>#N/A</v></c><c r="F1" s="5"><v>0.25</v></c></row><row r="2" ht="30" customHeight="1"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" ref="B2:C4" si="0">$A2*2+A$8&amp;"A1"</f><v>0</v></c><c r="C2"><f t="shared" si="0"/><v>0</v></c></row><row r="3" hidden="1"><c r="A3"><v>3</v></c><c r="B3"><f t="shared" si="0"/><v>0</v></c><c r="C3"><f t="shared" si="0"/><v>0</v></c></row><row r="4"><c r="A4"><v>4</v></c><c r="B4"><f t="shared" si="0"/><v>0</v></c><c r="C4"><f t="shared" si="0"/><v>0</v></c></row><row r="6"><c r="A6"><f t="array" ref="A6:B6">A2:B2*1</f><v>2</v></c><c r="B6"><v>0</v></c></row><row r="8">${filled.join('')}</row></sheetData><mergeCells count="1"><mergeCell ref="D2:E3"/></mergeCells></worksheet>`;

/** A workbook with looks of every kind that a grid shows, shared formulas and an array formula. */
export function styledWorkbook(): Uint8Array {
  return zipParts({
    '[Content_Types].xml': contentTypes({}, [
      ['xl/workbook.xml', 'sheet.main'],
      ['xl/worksheets/sheet1.xml', 'worksheet'],
      ['xl/worksheets/sheet2.xml', 'worksheet'],
      ['xl/styles.xml', 'styles'],
      ['xl/theme/theme1.xml', 'application/vnd.openxmlformats-officedocument.theme+xml'],
    ]),
    '_rels/.rels': rels([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `${declaration}<workbook xmlns="${mainNamespace}" xmlns:r="${relationshipNamespace}"><bookViews><workbookView activeTab="1"/></bookViews><sheets><sheet name="Looks" sheetId="1" r:id="rId1"/><sheet name="Front" sheetId="2" r:id="rId2"/></sheets><definedNames><definedName name="Limit">Looks!$A$2</definedName><definedName name="Own" localSheetId="1">_xldudf_TRIPDRIFT_SHIFT(Looks!$A$2,2)</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">Looks!$1:$1</definedName></definedNames></workbook>`,
    'xl/_rels/workbook.xml.rels': rels([
      ['worksheet', 'worksheets/sheet1.xml'],
      ['worksheet', 'worksheets/sheet2.xml'],
      ['styles', 'styles.xml'],
      ['theme', 'theme/theme1.xml'],
    ]),
    'xl/worksheets/sheet1.xml': sheet,
    'xl/worksheets/sheet2.xml': `${declaration}<worksheet xmlns="${mainNamespace}"><sheetData/></worksheet>`,
    'xl/styles.xml': styles,
    'xl/theme/theme1.xml': theme,
  });
}
