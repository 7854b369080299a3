import type { TableRules, LeftAside, UntidyRules } from '../../model/rules/tableRules.ts';
import type { MessagesOf } from './phrases.ts';
import type { Place } from '../../model/findings.ts';
import { listed, listedUpTo } from '../../model/wording.ts';

/** What is said of lists that are not kept in the standard shape. */
export const untidyMessages: MessagesOf<UntidyRules> = {
  'meaning-not-certain': ({ values: { quantity, header } }) =>
    `'${header}' may be the ${quantity}, but that is not certain, so it was not used. Answer the question about it.`,
  'lists-differ': ({ values: { quantity, places } }) =>
    `Lists differ about the ${quantity}: ${placeList(places)}. None was used; say which list is in force.`,
  'machine-not-said': ({ values: { tag, places } }) =>
    `Tag '${tag}' stands on several machines, and ${placeList(places)} does not say on which. Enter the machine there.`,
  'machine-of-list': ({ values: { machine, sheet, told } }) =>
    `The channels listed on sheet '${sheet}' are those of ${machine}, by ${told}.`,
  'left-aside': ({ values: { text, looksLike, why } }) =>
    `${text === '' ? 'It' : `'${text.slice(0, 80)}'`} looks like ${looksLike} and was left aside: ${leftAsideTexts[why]}.`,
  'record-of-several-machines': ({ values: { tag, machines } }) =>
    `Tag '${tag}' stands on ${listed(machines)}; it can't be told whose calibration record or readings these are, so they were not used. Name the machine in the tag.`,
};

/** Why something was left aside, for people. */
export const leftAsideTexts: Readonly<Record<LeftAside, string>> = {
  'not certain': 'it is not certain what it means',
  'no unit': 'nothing says its unit',
  'no meaning': 'nothing says what it means',
  rival: 'another column has the same meaning',
  hidden: 'it is hidden, and what people see was read',
  'no names': 'nothing in it names the channels',
  'no headers': 'it has no headers',
  'sums up': 'it sums the list up',
  spare: 'it is a spare place',
  heading: 'it is a heading or a remark',
  'no tag': 'it has no tag',
  'header again': 'it repeats the header',
  'calibration record': 'it is a calibration record',
  'left out': 'you said that it is none',
  'tables differ': 'lists differ about it',
  twice: 'its tag stands more than once',
  'machine not said': 'its machine is not said',
  'no settings': 'it has no settings',
  'no probe': 'it has no measured sensitivity',
  unusable: 'its value can’t be used',
};

/** What is said of tables, their rows and their tags. */
export const tableMessages: MessagesOf<TableRules> = {
  'row-without-tag': ({ values }) =>
    `Row ${values.row} has no tag, so it belongs to no channel and was not audited. Enter its tag.`,
  'heading-or-remark': ({ values: { row, text } }) =>
    `Row ${row} holds nothing but '${text.slice(0, 80)}' in the tag column; it was taken for a heading or remark and not audited.`,
  'header-repeated': ({ values }) => `Row ${values.row} repeats the header; it was left out.`,
  'hidden-sheet': ({ values: { sheet, holds } }) =>
    `Sheet '${sheet}' is hidden; ${allTheSame[holds]} all the same.`,
  'hidden-row': ({ values: { sheet, row } }) =>
    `Row ${row} of sheet '${sheet}' is hidden or filtered away; it was audited all the same.`,
  'row-below-table': ({ values: { row, tableEnd } }) =>
    `Row ${row} and what follows it stand below the spreadsheet table, which ends in row ${tableEnd}; they were audited all the same. Extend the table over them.`,
  'header-remark': ({ values }) =>
    `'${values.header}': what stands in brackets is no unit known here and was not used as one.`,
  'earlier-result': ({ values }) =>
    `Sheet '${values.sheet}' is the result of an earlier audit; it was not read as input.`,
  'duplicate-tag': ({ values }) => duplicateTag(values),
  'channel-without-settings': ({ values: { tag, sheet } }) =>
    `Tag '${tag}' has no row in the monitor settings ('${sheet}'), so its thresholds are not known. Add its settings or correct the tag.`,
  'settings-not-joined': ({ values }) =>
    `Tag '${values.tag}' stands more than once in the channel list, so these settings were not used. Keep one row there.`,
  'settings-without-channel': ({ values: { tag, sheet } }) =>
    `Tag '${tag}' has settings but stands in no row of the channel list ('${sheet}'), so where it really acts is not known. Add its measured sensitivity or correct the tag.`,
};

const allTheSame: Readonly<Record<TableRules['hidden-sheet']['holds'], string>> = {
  table: 'it was audited',
  'calibration records': 'its calibration records were read',
  history: 'its history of readings was read',
};

function duplicateTag(values: TableRules['duplicate-tag']): string {
  const stands = `Tag '${values.tag}' is in rows ${rowList(values.rows)} of the`;
  switch (values.kind) {
    case 'in channel list':
      return `${stands} channel list; only one can be right. Keep one.`;
    case 'in settings of a channel':
      return `${stands} monitor settings ('${values.sheet}'); only one can be right. Keep one.`;
    case 'in settings':
      return `${stands} monitor settings, so none of them was used. Keep one.`;
  }
}

function rowList(rows: readonly number[]): string {
  const shown = rows.slice(0, 5).join(', ');
  return rows.length > 5 ? `${shown} and ${rows.length - 5} more` : shown;
}

function placeList(places: readonly Place[]): string {
  return listedUpTo(
    places.map(({ sheet, row, column }) => `${sheet}!${column}${row}`),
    4,
  );
}
