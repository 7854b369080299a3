import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { mergeMaps } from '../../../audit/read/understand/answers/merge.ts';
import { meaning } from '../../../audit/read/understand/meaning.ts';
import type { AskedRow, Choice } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';

/** What the user chose in a row: one of its choices or a column clicked in the sheet, and a unit typed for it. */
export interface Chosen {
  readonly choice: Choice;
  /** `null`: none was typed. */
  readonly unit: string | null;
}

export type ChosenById = ReadonlyMap<string, Chosen>;

/** What holds in a row: what was chosen, else its first choice. */
export function chosenIn(row: AskedRow, chosen: ChosenById): Choice | undefined {
  return chosen.get(row.id)?.choice ?? row.choices[0];
}

/** What all rows together say about the workbook. */
export function answersOf(rows: readonly AskedRow[], chosen: ChosenById): ColumnMap {
  return rows.reduce<ColumnMap>((map, row) => mergeMaps(map, answerOf(row, chosen)), {});
}

/** How many of the rows say something. */
export function countAnswered(rows: readonly AskedRow[], chosen: ChosenById): number {
  return rows.filter((row) => Object.keys(answerOf(row, chosen)).length > 0).length;
}

function answerOf(row: AskedRow, chosen: ChosenById): ColumnMap {
  const own = chosen.get(row.id);
  if (!own && !row.asks) return {};
  const answer = chosenIn(row, chosen)?.answer ?? {};
  return own?.unit === null || own === undefined ? answer : withUnit(row, answer, own.unit);
}

/** An answer with the unit of the column that it names. */
function withUnit(row: AskedRow, answer: ColumnMap, unit: string): ColumnMap {
  const name = row.column && meaning(row.column.meaning).name;
  const tables = answer.tables?.map((table) => {
    const said = name === null ? undefined : table.columns?.[name];
    return name === null || said === undefined || said === null
      ? table
      : { ...table, units: { ...table.units, [name]: unit } };
  });
  return tables ? { ...answer, tables } : answer;
}

/** Whether the user has answered anything about this workbook. */
export function hasAnswers({ channels, settings, tables, names, cells }: ColumnMap): boolean {
  return [channels, settings, tables, names, cells].some((part) => part !== undefined);
}

/** What was answered, by what it is about: a list and the names of its meanings, tags, or cells. */
export function keptAnswers(map: ColumnMap): readonly { about: string; names: readonly string[] }[] {
  const { channels, settings, tables = [], names = {}, cells = {} } = map;
  const lists = [channels, settings, ...tables].flatMap((table) => (table ? [table] : []));
  const bySheet = new Map<string, string[]>();
  for (const { sheet = '', columns = {}, units = {} } of lists) {
    const about = sheet === '' ? askingMessages.anySheet : askingMessages.onSheet(sheet);
    const named = [...new Set([...Object.keys(columns), ...Object.keys(units)])];
    bySheet.set(about, [...new Set([...(bySheet.get(about) ?? []), ...named])]);
  }
  const [tags, places] = [Object.keys(names), Object.keys(cells)];
  return [
    ...[...bySheet].map(([about, own]) => ({ about, names: own })),
    ...(tags.length > 0 ? [{ about: askingMessages.spelled, names: tags }] : []),
    ...(places.length > 0 ? [{ about: askingMessages.numbersOf, names: places }] : []),
  ];
}

/** The map without any answer; what was said to be no part of the audit stays. */
export function withoutAnswers({ notOfAudit }: ColumnMap): ColumnMap {
  return notOfAudit ? { notOfAudit } : {};
}
