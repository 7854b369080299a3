import { columnLetters } from '../../../cells/address.ts';
import type { Place } from './blocks/block.ts';
import type { Evidence } from './standing/evidence.ts';

const scopes: Readonly<Record<Extract<Evidence, { is: 'unit' }>['scope'], string>> = {
  header: 'in the header',
  group: 'in the header above',
  beside: 'in the unit column',
  cell: 'in the cells',
  format: 'shown with the numbers',
  title: 'in the title',
  note: 'in a note on the sheet',
  legend: 'in a legend',
  answer: 'as answered',
};

/** Evidence as sentences for people, in the order in which it was found. */
export function evidenceTexts(evidence: readonly Evidence[]): string[] {
  return evidence.map(evidenceText);
}

/** One piece of evidence as a short sentence. */
function evidenceText(one: Evidence): string {
  switch (one.is) {
    case 'answer':
      return 'You said so';
    case 'standard header':
      return `Header '${one.header}'`;
    case 'word':
      return `The word '${one.text}'${one.covers === 'merged' ? ', merged above it' : one.covers === 'assumed' ? ', to the left above it' : ''}`;
    case 'unit':
      return `Unit ${one.unit} ${scopes[one.scope]}${one.place ? ` (${at(one.place)})` : ''}${one.fits ? '' : ', which does not fit'}`;
    case 'size':
      return `Typical number ${one.median}${one.unit === null ? '' : ` ${one.unit}`}: ${one.fits ? 'a usual size' : 'an unusual size'}`;
    case 'role':
      return roleText(one);
    case 'series':
      return `'${one.text}' in the ${one.from} says ${one.series}`;
    case 'aside':
      return `'${one.text}' says ${one.as === 'old' ? 'that it is an old one' : 'that it is only proposed'}`;
    case 'order':
      return one.holds
        ? `'${one.below}' is below '${one.above}' in all ${one.records} records`
        : `'${one.below}' is not below '${one.above}' everywhere`;
    case 'pair':
      return `A pair: '${one.low}' and '${one.high}'`;
    case 'shared':
      return `${one.texts} of its ${one.of} texts stand on sheet '${one.with}' too`;
    case 'unique':
      return `${one.texts} different texts, none twice`;
    case 'counting':
      return 'It only counts the rows';
    case 'hidden':
      return `The ${one.what} is hidden`;
    case 'rival':
      return `'${one.header}' (${at(one.place)}) could be it too${one.hidden ? ', but is hidden' : ''}`;
    case 'values':
      return `Filled in ${one.filled} of ${one.records} records`;
    case 'label':
      return `'${one.label}' with '${one.value}' beside it (${at(one.place)})`;
    case 'sheet name':
      return `The sheet is called '${one.sheet}'`;
    case 'heading':
      return `The heading '${one.text}' (${at(one.place)})`;
    case 'axis':
      return `'${one.axis}' beside '${one.other}'`;
    case 'ratio':
      return `Measured is ${one.ratio.toPrecision(3)} times configured${one.fits ? '' : ': the units do not agree'}`;
  }
}

function roleText({ role, from, company }: Extract<Evidence, { is: 'role' }>): string {
  const beside = company.length > 0 ? `, beside ${company.map((text) => `'${text}'`).join(' and ')}` : '';
  if (from === 'company') return `Taken as ${role}${beside}`;
  if (from === 'the other column') return `Taken as ${role}: the other column is not`;
  if (from === 'assumed group') return `The group to the left above it says ${role}`;
  return `Its words say ${role}${beside}`;
}

function at({ sheet, row, column }: Place): string {
  return `${sheet}!${columnLetters(column)}${row}`;
}
