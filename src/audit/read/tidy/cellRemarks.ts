import { factOf, type Severity, type Place as CellPlace } from '../../model/findings.ts';
import type { CellRules } from '../../model/rules/cellRules.ts';
import type { RuleValues, RuleId } from '../../model/rules/rules.ts';
import type { Diagnostic } from '../rows/diagnostic.ts';
import type { PlacedNote } from '../understand/readings/note.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { Place } from '../understand/blocks/block.ts';
import { meaning, type MeaningId } from '../understand/meaning.ts';
import type { ReadChannel, ReadingProblem } from '../understand/readings/channel.ts';

/** What there is to say of a cell that was read or that could not be, as a finding about its column; `text`: the cell as it stands. */
export function cellRemark(
  { note, meaning, unusable }: PlacedNote,
  header: string,
  text: string,
): Diagnostic {
  const severity: Severity = unusable ? 'warning' : 'note';
  const say = <R extends keyof CellRules>(rule: R, values: RuleValues[R]): Diagnostic => ({
    ...factOf(rule, severity, values),
    column: meaning,
  });
  switch (note.is) {
    case 'number as text':
      return say('number-written-as-text', { header, cell: text, value: note.value });
    case 'unit in the cell':
      return say('unit-in-cell', { header, cell: text, unit: note.unit, of: note.of });
    case 'worked out from full scale': {
      const { percent, scale, unit } = note;
      return say('share-of-full-scale', { header, percent, scale, unit });
    }
    case 'said blank':
      return say('said-blank', { header, cell: note.word });
    case 'needs a person':
      return say('number-in-doubt', { header, cell: note.word, doubt: note.doubt, value: note.value });
    case 'no number':
      return say('value-not-a-number', { kind: 'text', header, cell: note.word, why: 'no number' });
    case 'error':
      return say('value-is-an-error', {
        header,
        cell: note.code,
        why: note.code.startsWith('#') ? 'spreadsheet error' : 'no stored result',
      });
    case 'no date':
      return say('value-not-a-date', { header, cell: note.word, why: note.why });
    case 'not understood':
      return say('value-not-understood', { header, cell: note.word, expected: [] });
    case 'unit not clear':
      return say(
        'unit-not-clear',
        note.second === null
          ? { header, kind: 'header not known', unit: note.first }
          : { header, kind: 'header against row', ofHeader: note.first, ofRow: note.second },
      );
    case 'kind and unit differ':
      return say('kind-against-unit', { header, cell: note.word, unit: note.unit });
    case 'no full scale':
      return say('share-without-full-scale', { header, percent: note.percent });
  }
}

/** A place with its column's letters, as findings have it. */
export function withColumnLetters({ sheet, row, column }: Place): CellPlace {
  return { sheet, row, column: columnLetters(column) };
}

/** What keeps a meaning of a channel from being known, each with the cell to look at. */
export function problemRemarks({ tag, troubles }: ReadChannel): { remark: Diagnostic; place: Place }[] {
  return troubles.flatMap((trouble) => {
    const [place] = trouble.places;
    if (!place) return [];
    return trouble.meanings.map((id) => ({ remark: ofTrouble(trouble, tag, id), place }));
  });
}

function ofTrouble(trouble: ReadingProblem, tag: string, id: MeaningId): Diagnostic {
  const places = trouble.places.map(withColumnLetters);
  const say = <R extends RuleId>(rule: R, values: RuleValues[R]): Diagnostic => ({
    ...factOf(rule, 'warning', values),
    column: id,
  });
  switch (trouble.is) {
    case 'twice':
      return say('duplicate-tag', { kind: 'in channel list', tag, rows: places.map(({ row }) => row) });
    case 'rival tables':
      return say('lists-differ', { quantity: meaning(id).name, places });
    case 'machine not said':
      return say('machine-not-said', { tag, places });
  }
}
