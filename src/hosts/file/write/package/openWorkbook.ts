import { refuseOpenDocument, refuseUnlessZip } from '../../read/container.ts';
import { readRelationships, type Relationship } from '../../read/relationships.ts';
import { openZip, type Archive, type ZipEntry } from '../../zip/archive.ts';
import { defaultLimits } from '../../zip/limits.ts';
import { FileRefused } from '../../zip/refused.ts';
import { attribute, child } from '../xml/outline.ts';
import { editable, type EditablePart } from './editable.ts';
import { dialectOf, type Dialect } from './namespaces.ts';
import { relationshipsOf } from './relationships.ts';

/** A user's workbook opened for adding sheets to its end, or for changing cells. */
export interface OpenWorkbook {
  readonly archive: Archive;
  readonly dialect: Dialect;
  readonly contentTypes: EditablePart;
  readonly workbook: EditablePart;
  readonly workbookRels: EditablePart;
  readonly styles: EditablePart | undefined;
  /** The list of formula cells in the order of their calculation, which programs make anew where it is missing. */
  readonly calcChain: ZipEntry | undefined;
  /** Whether its day numbers count from 1904 instead of 1900. */
  readonly from1904: boolean;
  /** Whether it carries a digital signature (relationship `…/digital-signature/origin`). */
  readonly signed: boolean;
}

/**
 * Opens a workbook and finds its parts through their relationships. Throws FileRefused for what cannot be added
 * to: a file that is no complete .xlsx or .xlsm, a workbook whose structure is protected, and one shared in the
 * old way with a log of changes, which a new sheet would contradict. Without `adding`, a protected structure is no hindrance.
 */
export function openWorkbook(bytes: Uint8Array, adding = true): OpenWorkbook {
  refuseUnlessZip(bytes);
  const archive = openZip(bytes, defaultLimits);
  refuseOpenDocument(archive);
  const packageLinks = readRelationships(archive, '', defaultLimits);
  const start = ofKind(packageLinks, 'officeDocument');
  if (!start || /\.bin$/i.test(start.target)) throw notAWorkbook();
  const workbook = editable(archive, start.target);
  const dialect = dialectOf(workbook.root.uri);
  if (!dialect || workbook.root.local !== 'workbook') throw notAWorkbook();
  const workbookRels = editable(archive, relationshipsOf(start.target));
  const links = readRelationships(archive, start.target, defaultLimits);
  refuseUnfit(workbook, links, adding);
  const stylesLink = ofKind(links, 'styles');
  const chain = ofKind(links, 'calcChain');
  const properties = child(workbook.root, 'workbookPr');
  return {
    archive,
    dialect,
    contentTypes: editable(archive, '[Content_Types].xml'),
    workbook,
    workbookRels,
    styles: stylesLink && archive.get(stylesLink.target) && editable(archive, stylesLink.target),
    calcChain: chain && archive.get(chain.target),
    from1904: properties !== undefined && isTrue(attribute(properties, 'date1904')),
    signed: ofKind(packageLinks, 'origin') !== undefined,
  };
}

function refuseUnfit(workbook: EditablePart, links: readonly Relationship[], adding: boolean): void {
  const protection = child(workbook.root, 'workbookProtection');
  if (adding && protection && isTrue(attribute(protection, 'lockStructure'))) {
    throw new FileRefused(
      'The workbook’s structure is protected, so no sheet can be added. Remove the protection (Review, Protect Workbook) and try again.',
    );
  }
  if (ofKind(links, 'revisionHeaders')) {
    throw new FileRefused(
      'The workbook is shared with a log of changes, so nothing can be added or changed safely. Stop sharing it (Review, Unshare Workbook) and try again.',
    );
  }
}

function ofKind(links: readonly Relationship[], kind: string): Relationship | undefined {
  return links.find((link) => link.kind === kind);
}

function isTrue(value: string | undefined): boolean {
  return value === '1' || value === 'true' || value === 'on';
}

function notAWorkbook(): FileRefused {
  return new FileRefused('The file is not an .xlsx or .xlsm workbook. Save it as .xlsx and try again.');
}
