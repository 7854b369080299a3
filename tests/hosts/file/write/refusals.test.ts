import { describe, expect, it } from 'vitest';
import { addSheets } from '../../../../src/hosts/file/write/addSheets.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { contentTypes, rels, zipParts, type Parts } from '../../../fixtures/workbooks/package.ts';
import { smallParts } from '../../../fixtures/workbooks/small.ts';
import { resultSheet } from './model.ts';

const small = smallParts();
const workbookRels = small['xl/_rels/workbook.xml.rels'] as string;

function without(name: string): Parts {
  return Object.fromEntries(Object.entries(small).filter(([part]) => part !== name));
}

describe('a workbook is refused in one clear line', () => {
  it.each<[string, RegExp, Uint8Array]>([
    [
      'whose structure is protected',
      /structure is protected.*Remove the protection/,
      zipParts(smallParts({ workbookHead: '<workbookProtection lockStructure="1"/>' })),
    ],
    [
      'shared with a log of changes',
      /shared with a log of changes.*Stop sharing/,
      zipParts({
        ...small,
        'xl/_rels/workbook.xml.rels': workbookRels.replace(
          '</Relationships>',
          '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/revisionHeaders" Target="revisions/revisionHeaders.xml"/></Relationships>',
        ),
      }),
    ],
    ['without its list of parts', /\[Content_Types\]\.xml/, zipParts(without('[Content_Types].xml'))],
    ['without its workbook part', /xl\/workbook\.xml/, zipParts(without('xl/workbook.xml'))],
    [
      'of another kind of document',
      /not an \.xlsx or \.xlsm/,
      zipParts({
        '[Content_Types].xml': contentTypes({}, []),
        '_rels/.rels': rels([['officeDocument', 'word/document.xml']]),
        'word/document.xml': '<document xmlns="urn:other"/>',
        'word/_rels/document.xml.rels': rels([]),
      }),
    ],
    [
      'of the binary kind',
      /not an \.xlsx or \.xlsm/,
      zipParts({
        ...small,
        '_rels/.rels': rels([['officeDocument', 'xl/workbook.bin']]),
        'xl/workbook.bin': Uint8Array.of(1, 2, 3),
      }),
    ],
    [
      'with a broken part',
      /xl\/styles\.xml.*damaged/,
      zipParts({ ...small, 'xl/styles.xml': '<styleSheet><fonts></styleSheet>' }),
    ],
    [
      'with a document type',
      /document type/,
      zipParts({ ...small, 'xl/styles.xml': '<!DOCTYPE a [<!ENTITY b "c">]><styleSheet/>' }),
    ],
    ['that is no zip', /not an \.xlsx/, new TextEncoder().encode('Tag,Configured')],
  ])('%s', (_, message, bytes) => {
    let thrown: unknown;
    try {
      addSheets(bytes, [resultSheet()]);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(FileRefused);
    expect((thrown as FileRefused).message).toMatch(message);
    expect((thrown as FileRefused).message).not.toContain('\n');
  });

  it('but one with its windows or revisions protected only is written', () => {
    const parts = smallParts({ workbookHead: '<workbookProtection lockStructure="0" lockWindows="1"/>' });
    expect(addSheets(zipParts(parts), [resultSheet()]).notes).toEqual([]);
  });
});

it('a digitally signed workbook is copied, signature and all, with a note that it no longer holds', () => {
  const signed = zipParts({
    ...small,
    '_rels/.rels': rels([
      ['officeDocument', 'xl/workbook.xml'],
      [
        'http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin',
        '_xmlsignatures/origin.sigs',
      ],
    ]),
    '_xmlsignatures/origin.sigs': new Uint8Array(0),
  });
  expect(addSheets(signed, [resultSheet()]).notes).toEqual([
    expect.stringMatching(/signature no longer holds/),
  ]);
});
