import type { NotRead } from '../../model/attention.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import type { MachineSource } from '../../model/rules/tableRules.ts';
import { nameOfColumn } from '../tables/vocabulary.ts';
import type { Evidence } from '../understand/standing/evidence.ts';
import type { NotUsed } from '../understand/unread/notUsed.ts';
import type { TableRead } from '../understand/tables/tableRead.ts';
import { withColumnLetters } from './cellRemarks.ts';

/** What of a workbook was left aside: what may be missed, and what is merely worth knowing. */
export interface LeftAsideOf {
  readonly notRead: readonly NotRead[];
  readonly remarks: readonly PlacedFact[];
}

const kinds: Readonly<Record<NotUsed['what'], NotRead['what']>> = {
  list: 'table',
  field: 'column',
  line: 'row',
  value: 'value',
  heading: 'row',
};

const looks: Readonly<Partial<Record<NotUsed['looksLike'], string>>> = {
  list: 'a list of channels',
  sensitivity: 'a sensitivity',
  level: 'a level at which it acts',
  'gap voltage': 'a gap voltage',
  date: 'a date',
  channel: 'a channel',
  other: 'a quantity of this audit',
};

/** What a finding of the channel itself says. */
const saidOfChannel: ReadonlySet<NotUsed['why']> = new Set([
  'tables differ',
  'twice',
  'machine not said',
  'no settings',
  'no probe',
  'unusable',
]);

/** What was not used of a workbook, by how much hangs on it, but for what a finding of a channel says. */
export function leftAside(notUsed: readonly NotUsed[]): LeftAsideOf {
  const notRead: NotRead[] = [];
  const remarks: PlacedFact[] = [];
  for (const { what, looksLike, why, weight, place, text } of notUsed) {
    if (saidOfChannel.has(why)) continue;
    const at = withColumnLetters(place);
    const likeness = looks[looksLike] ?? nameOfColumn(looksLike);
    if (weight === 'note')
      remarks.push(factAt(at, factOf('left-aside', 'note', { text, looksLike: likeness, why })));
    else
      notRead.push({
        what: kinds[what],
        text,
        looksLike: likeness,
        severity: weight === 'may bear on a danger' ? 'critical' : 'warning',
        why,
        ...at,
      });
  }
  return { notRead, remarks };
}

/** How evidence tells the machine of a list. */
const toldByEvidence: Readonly<Partial<Record<Evidence['is'], MachineSource>>> = {
  label: 'a label',
  'sheet name': 'the name of its sheet',
  heading: 'a heading',
  answer: 'what you said',
};

/** How the machine of each list without a column for it was told. */
export function machineRemarks(tables: readonly TableRead[]): PlacedFact[] {
  return tables.flatMap(({ lane, machine, leftOut, part }) => {
    if (leftOut || part !== 'channels' || machine?.standing !== 'certain') return [];
    const { name, evidence } = machine;
    const { block } = lane;
    const first = block.fields[0]?.header[0];
    const at =
      'place' in evidence && evidence.place
        ? evidence.place
        : { sheet: block.sheet.name, row: first?.row ?? block.header[0], column: first?.column ?? 1 };
    const values = {
      machine: name,
      sheet: block.sheet.name,
      told: toldByEvidence[evidence.is] ?? 'something else',
    };
    return [factAt(withColumnLetters(at), factOf('machine-of-list', 'note', values))];
  });
}
