/** The two dialects of the format: transitional (what spreadsheet programs save by default) and strict (ISO/IEC 29500-1). */
export interface Dialect {
  /** Namespace of spreadsheet markup. */
  readonly main: string;
  /** Namespace of `r:id`, and stem of the relationship types. */
  readonly relationships: string;
  /** Stem of the namespaces of drawings: `…/chart`, `…/main`, `…/spreadsheetDrawing`. */
  readonly drawing: string;
}

export const transitional: Dialect = {
  main: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
  relationships: 'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
  drawing: 'http://schemas.openxmlformats.org/drawingml/2006',
};

export const strict: Dialect = {
  main: 'http://purl.oclc.org/ooxml/spreadsheetml/main',
  relationships: 'http://purl.oclc.org/ooxml/officeDocument/relationships',
  drawing: 'http://purl.oclc.org/ooxml/drawingml',
};

/** The dialect whose spreadsheet namespace this is. */
export function dialectOf(uri: string): Dialect | undefined {
  return [transitional, strict].find((dialect) => dialect.main === uri);
}

const contentTypeStem = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

export const worksheetType = `${contentTypeStem}.worksheet+xml`;
export const stylesType = `${contentTypeStem}.styles+xml`;
export const tableType = `${contentTypeStem}.table+xml`;
export const workbookType = `${contentTypeStem}.sheet.main+xml`;
export const drawingType = 'application/vnd.openxmlformats-officedocument.drawing+xml';
export const chartType = 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml';
export const relationshipsType = 'application/vnd.openxmlformats-package.relationships+xml';
export const packageRelationships = 'http://schemas.openxmlformats.org/package/2006/relationships';
export const packageContentTypes = 'http://schemas.openxmlformats.org/package/2006/content-types';
