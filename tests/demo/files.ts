import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { audit } from '../../src/audit/audit.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';

/** Path of a workbook that comes with the project. */
export function workbookPath(name: string): string {
  return fileURLToPath(new URL(`../../workbooks/${name}`, import.meta.url));
}

/** The committed workbook's bytes. */
export function committed(name: string): Uint8Array {
  return new Uint8Array(readFileSync(workbookPath(name)));
}

/** The report of an audit of a committed workbook on that day. */
export function auditedOn(day: string, name = 'harbour-station.xlsx'): Report {
  return audit(readWorkbook(name, committed(name)), { now: new Date(`${day}T12:00:00Z`) });
}
