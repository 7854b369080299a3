import { capital } from '../../model/wording.ts';
import type { Place } from '../../read/understand/blocks/block.ts';
import type { FieldOption, Option, Question } from '../../read/understand/questions/question.ts';
import { cellName, fieldWords, listWords, tablesIn, meaningWords } from './questionWords.ts';

/** One way to answer, for people. */
export interface OptionText {
  /** What is chosen: `Column G of sheet 'Panel', 'HH trip'`. */
  readonly label: string;
  /** Where it stands, its unit and sample values; empty where there is nothing to add. */
  readonly detail: string;
}

/** An option of a question. */
export function optionText({ subject, options }: Question, option: Option): OptionText {
  const { field, text } = option;
  const tables = tablesIn(option);
  switch (subject.is) {
    case 'field':
      return field
        ? { label: capital(fieldWords(field, tables[0])), detail: fieldDetail(field) }
        : { label: `None: this list has no ${meaningWords(subject.meaning)}`, detail: '' };
    case 'unit':
      return { label: text, detail: `${samplesOf(subject.field.samples)} ${text}` };
    case 'list in force': {
      const chosen = tables.find(({ use }) => use === true);
      return { label: chosen ? capital(listWords(chosen, tables)) : text, detail: '' };
    }
    case 'found or left': {
      const left = tables.find(({ series }) => series === 'as left');
      const found = tables.find(({ series }) => series === 'as found');
      if (!left || !found) return { label: text, detail: '' };
      return {
        label: `${capital(listWords(left, tables))} as left`,
        detail: `${listWords(found, tables)} as found`,
      };
    }
    case 'line in force':
      return { label: capital(lineWords(subject.places[options.indexOf(option)], text)), detail: '' };
    case 'machine': {
      const chosen = tables.find(({ use }) => use === true);
      if (chosen) return { label: `${capital(listWords(chosen, tables))} alone is in force`, detail: '' };
      return { label: text === '' ? 'None of them is a machine' : text, detail: '' };
    }
    case 'names':
      return option === options[0]
        ? { label: 'They are the same', detail: '' }
        : { label: 'They are different channels', detail: 'each stays by itself' };
    case 'value':
      if (text === '') return { label: 'No number that counts', detail: 'the value stays missing' };
      return { label: text, detail: `for ${cellName(subject.place)}` };
  }
}

/** A line of a list: a row, or a column where its records lie in columns; `name` is its number or its letters. */
export function lineWords(place: Place | undefined, name: string): string {
  if (!place) return name;
  return `${name === String(place.row) ? 'row' : 'column'} ${name} of sheet '${place.sheet}'`;
}

function fieldDetail({ place, unit, samples }: FieldOption): string {
  const values = samplesOf(samples);
  return `${cellName(place)}${values === '' ? '' : `: ${values}`}${unit === null ? '' : ` ${unit}`}`;
}

/** Samples shown of a field. */
const mostSamples = 3;

/** Some values of a field in a line, apart even where they have decimal commas. */
export function samplesOf(samples: readonly string[]): string {
  return samples.slice(0, mostSamples).join('; ');
}
