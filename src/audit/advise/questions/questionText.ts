import type { MappedTable } from '../../model/columnMap.ts';
import { capital, listed, listedUpTo } from '../../model/wording.ts';
import { evidenceTexts } from '../../read/understand/evidenceText.ts';
import type { Question, Subject } from '../../read/understand/questions/question.ts';
import { lineWords, optionText, samplesOf, type OptionText } from './optionText.ts';
import {
  cellName,
  fieldWords,
  listAt,
  listWords,
  sheetsWords,
  tablesIn,
  meaningWords,
} from './questionWords.ts';

/** A question as people read it, in pane, terminal and files. */
export interface QuestionText {
  /** What it is about, without a capital: `danger setpoint`, `unit of the full scale`. */
  readonly title: string;
  /** To be answered by yes or no: whether the proposal is right. */
  readonly question: string;
  /** How many channels hang on it. */
  readonly stakes: string;
  /** What speaks for the proposal, a line each. */
  readonly evidence: readonly string[];
  /** In the order of the question's options: the proposal first. */
  readonly options: readonly OptionText[];
}

/** Tags and pairs of tags that are named in a line. */
const mostNamed = 6;

/** The sentences of a question, from its values alone. */
export function questionText(question: Question): QuestionText {
  return {
    title: titleOf(question),
    question: asked(question),
    stakes: stakesOf(question),
    evidence: evidenceOf(question),
    options: question.options.map((option) => optionText(question, option)),
  };
}

function titleOf({ subject, options, sheets }: Question): string {
  switch (subject.is) {
    case 'field': {
      const probe = options[0] ? tablesIn(options[0])[0]?.probe : undefined;
      return `${meaningWords(subject.meaning)}${probe === undefined ? '' : ` of ${probe}`}`;
    }
    case 'unit':
      return `unit of the ${meaningWords(subject.meaning)}`;
    case 'list in force':
      return 'list in force';
    case 'found or left':
      return 'as found and as left';
    case 'machine':
      return sheets.length > 1
        ? `machines of ${sheets.length} sheets`
        : `machine of sheet '${subject.sheet}'`;
    case 'line in force':
      return `line of ${channelWords(subject)} in force`;
    case 'names':
      return 'tags spelled in two ways';
    case 'value':
      return `${meaningWords(subject.meaning)} of ${subject.tag}`;
  }
}

function asked({ subject, options, records, sheets }: Question): string {
  const [proposed] = options;
  const tables = proposed ? tablesIn(proposed) : [];
  const text = proposed?.text ?? '';
  switch (subject.is) {
    case 'field': {
      const [table] = tables;
      const name = meaningWords(subject.meaning);
      const whose = table?.probe === undefined ? '' : ` of probe ${table.probe}`;
      if (!proposed?.field) return `Has the list on sheet '${table?.sheet ?? ''}' no ${name}?`;
      return `Is ${fieldWords(proposed.field, table)}, the ${name}${whose}?${alike(tables, sheets)}`;
    }
    case 'unit':
      return `Is the ${meaningWords(subject.meaning)} in ${text}? ${capital(fieldWords(subject.field, tables[0]))}, states ${subject.field.unit ?? 'no unit'}.${alike(tables, sheets)}`;
    case 'list in force': {
      const chosen = tables.filter(({ use }) => use === true).map((table) => listWords(table, tables));
      return `${channels(records)} ${records === 1 ? 'has' : 'have'} different values in ${tables.length} lists. Is ${listed(chosen)} in force?`;
    }
    case 'found or left': {
      const [left, found] = (['as left', 'as found'] as const).map((series) =>
        listed(tables.filter((table) => table.series === series).map((table) => listWords(table, tables))),
      );
      return `${channels(records)} ${records === 1 ? 'was' : 'were'} measured twice. Is ${left ?? ''} as left, and ${found ?? ''} as found?`;
    }
    case 'machine': {
      const [table, ...more] = tables;
      if (table?.machine !== undefined && more.length === 0)
        return `Is '${text}' the machine of the ${listAt(table)} of sheet '${table.sheet}'?`;
      return `Are these the machines on ${sheetsWords(sheets)}: ${text}?`;
    }
    case 'line in force':
      return `${subject.places.length} lines name ${channelWords(subject)}. Is ${lineWords(subject.places[0], text)} in force?`;
    case 'names': {
      const [first, ...more] = subject.pairs;
      return first && more.length === 0
        ? `Are '${first[0]}' and '${first[1]}' the same channel?`
        : `${subject.pairs.length} tags are spelled in two ways: are they the same channels?`;
    }
    case 'value':
      return `Is the ${meaningWords(subject.meaning)} of ${subject.tag} ${text}? Cell ${cellName(subject.place)} says '${subject.text}'.`;
  }
}

/** That an answer goes for several lists. */
function alike(tables: readonly MappedTable[], sheets: readonly string[]): string {
  return tables.length > 1 ? ` So in ${tables.length} lists alike, on ${sheetsWords(sheets)}.` : '';
}

function channelWords({ tag, machine }: Extract<Subject, { is: 'line in force' }>): string {
  return machine === '' ? tag : `${tag} of ${machine}`;
}

function stakesOf({ needed, records }: Question): string {
  if (records === 0) return needed ? 'Needed.' : 'Optional.';
  return needed ? `${channels(records)} cannot be judged without it.` : `${channels(records)}, optional.`;
}

function evidenceOf({ subject, evidence, options }: Question): readonly string[] {
  const told = evidenceTexts(evidence);
  switch (subject.is) {
    case 'field': {
      const samples = options[0]?.field?.samples ?? [];
      return [
        ...(told.length > 0 ? told : ['No header says so']),
        ...(samples.length > 0 ? [`Begins with ${samplesOf(samples)}`] : []),
      ];
    }
    case 'list in force':
      return [
        `${capital(listed(subject.meanings.map(meaningWords)))} of ${listedUpTo(subject.tags, mostNamed)} differ`,
        ...told,
      ];
    case 'found or left':
      return [`In both: ${listedUpTo(subject.tags, mostNamed)}`, ...told];
    case 'names':
      return subject.pairs
        .slice(0, mostNamed)
        .map(([written, joined]) => `'${written}' and '${joined}'`)
        .concat(subject.pairs.length > mostNamed ? [`and ${subject.pairs.length - mostNamed} more`] : []);
    case 'unit':
    case 'machine':
    case 'line in force':
    case 'value':
      return told;
  }
}

/** A number of channels, in words. */
export function channels(count: number): string {
  return count === 1 ? '1 channel' : `${count} channels`;
}
