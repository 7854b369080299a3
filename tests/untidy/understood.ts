import { columnLetters } from '../../src/cells/address.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import type { ColumnMap } from '../../src/audit/model/columnMap.ts';
import { finish } from '../../src/audit/model/steps.ts';
import type { Place } from '../../src/audit/read/understand/blocks/block.ts';
import { meaning, type MeaningId } from '../../src/audit/read/understand/meaning.ts';
import type { Question } from '../../src/audit/read/understand/questions/question.ts';
import type { ReadChannel } from '../../src/audit/read/understand/readings/channel.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import type { TableRead } from '../../src/audit/read/understand/tables/tableRead.ts';
import { understand, type Understanding } from '../../src/audit/read/understand/understand.ts';
import type { NotUsed } from '../../src/audit/read/understand/unread/notUsed.ts';
import type { Outcome, ProposedPlace } from './judge/outcome.ts';
import type { Reader } from './audited.ts';
import { verdictOf } from './truth.ts';

/** The understanding alone, judged by the simple rule at 5 %: a report of what it reads, asks and leaves out. */
export const understood: Reader = (workbook) => outcomeOf(workbook, {});

function outcomeOf(workbook: Workbook, answers: ColumnMap): Outcome {
  const found = finish(understand(workbook, answers));
  const { channels, questions } = found;
  const accepted = questions.length > 0 ? () => outcomeOf(workbook, found.proposal) : null;
  const asked = {
    proposed: questions.flatMap(proposedPlaces),
    choice: questions.flatMap(({ subject, options }) =>
      subject.is === 'list in force' || subject.is === 'found or left' ? options.map(({ text }) => text) : [],
    ),
    accepted,
  };
  if (channels.length === 0) return { report: null, refusal: 'No channel is understood.', ...asked };
  return { report: reportOf(found), refusal: null, ...asked };
}

function proposedPlaces({ subject, options }: Question): ProposedPlace[] {
  const [first] = options;
  if (subject.is !== 'field' || !first?.field) return [];
  const { place } = first.field;
  return [
    {
      meaning: nameOf(subject.meaning),
      sheet: place.sheet,
      column: columnLetters(place.column),
      row: place.row,
    },
  ];
}

function nameOf(id: MeaningId): string {
  return id === 'asLeftSensitivity' ? 'as-left sensitivity' : meaning(id).name.toLowerCase();
}

function reportOf({ channels, tables, notUsed, questions }: Understanding): object {
  const written = channels.map(channelOf);
  return {
    channels: written,
    attention: written
      .filter(({ thresholds, asLeft }) => thresholds[1]?.verdict === 'late' && asLeft === null)
      .map(({ tag }) => ({ severity: 'critical', subject: { tag, threshold: 'danger' } })),
    notRead: notUsed.map(notReadOf),
    questions: questions.map(({ subject, options }) => ({
      about: subject.is,
      places: [
        ...options.flatMap(({ field }) => (field ? [{ ...placeOf(field.place), what: 'column' }] : [])),
        ...(subject.is === 'unit' ? [{ ...placeOf(subject.field.place), what: 'column' }] : []),
        ...(subject.is === 'value' ? [{ ...placeOf(subject.place), what: 'value', text: subject.tag }] : []),
        ...(subject.is === 'names' ? subject.pairs.map((pair) => ({ sheet: '', text: pair.join(' ') })) : []),
      ],
    })),
    columns: tables.flatMap(columnsOf),
  };
}

const whatOf: Readonly<Record<NotUsed['what'], string>> = {
  list: 'table',
  field: 'column',
  line: 'row',
  value: 'value',
  heading: 'row',
};

function notReadOf({ what, why, looksLike, place, text }: NotUsed): object {
  return { what: whatOf[what], why, looksLike, text, ...placeOf(place) };
}

function placeOf({ sheet, row, column }: Place): { sheet: string; row: number; column: string } {
  return { sheet, row, column: columnLetters(column) };
}

function columnsOf({ part, tag, claims, lane }: TableRead): object[] {
  if (part !== 'channels' || tag?.standing !== 'certain') return [];
  return [...claims.values()]
    .filter(({ standing }) => standing === 'certain')
    .map(({ meaning: id, field }) => ({
      meaning: nameOf(id),
      sheet: lane.block.sheet.name,
      row: lane.block.lies === 'columns' ? field.place.at : (field.place.header.at(-1)?.row ?? 0),
      column: columnLetters(field.place.header.at(-1)?.column ?? 1),
    }));
}

/** In mV/mil. */
function perMil(amount: Amount | null | undefined): number | null {
  const unit = amount?.unit;
  return amount && unit?.dimension === 'voltage/displacement' ? amount.value * unit.factor * 25.4 : null;
}

/** In mil peak to peak. */
function mil(amount: Amount | null | undefined): number | null {
  const unit = amount?.unit;
  if (!amount || unit?.dimension !== 'displacement') return null;
  const peaks = unit.detection === '0-p' ? 2 : unit.detection === 'rms' ? 2 * Math.SQRT2 : 1;
  return (amount.value * unit.factor * peaks) / 25.4;
}

/** Values whose absence every audit remarks at the channel. */
const needed = ['measured', 'configured', 'alert', 'danger'] as const;

function channelOf(channel: ReadChannel) {
  const { tag, machine, kind, kindSaid, values, notes, troubles, lines } = channel;
  const amount = (id: MeaningId) => values.get(id)?.amount;
  const text = (id: MeaningId) => values.get(id)?.text || null;
  const configured = perMil(amount('configured'));
  const [alert, danger] = [mil(amount('alert')), mil(amount('danger'))];
  const inUnits = { measured: perMil(amount('measured')), configured, alert, danger };
  const isShaft = kind === 'radial' || (kind === null && kindSaid === '');
  const state = (measured: number | null) => ({
    sensitivity: { configured, measured, unit: 'mV/mil' },
    thresholds: (
      [
        ['alert', alert],
        ['danger', danger],
      ] as const
    ).map(([name, setpoint]) => {
      const known = configured !== null && measured !== null && setpoint !== null;
      return {
        name,
        multiplier: 1,
        setpoint,
        effective: known ? (setpoint * configured) / measured : null,
        verdict: known && isShaft ? verdictOf(configured, measured) : 'incomplete',
      };
    }),
  });
  const left = perMil(amount('asLeftSensitivity'));
  return {
    tag,
    machine,
    kind,
    unit: 'mil',
    detection: 'p-p',
    ...state(perMil(amount('measured'))),
    asLeft: left === null ? null : state(left),
    inputs: {
      fullScale: mil(amount('fullScale')),
      limit: mil(amount('limit')),
      gapVoltage: amount('gapVoltage')?.value ?? null,
      group: text('group'),
      voting: text('voting'),
      bypass: bypassed(text('bypass')),
    },
    findings: [
      ...needed.flatMap((id) =>
        inUnits[id] !== null
          ? []
          : lines.map(({ place }) => ({ is: 'missing', meaning: id, ...placeOf(place) })),
      ),
      ...notes
        .filter(({ unusable }) => unusable)
        .map(({ note, place }) => ({ is: note.is, ...placeOf(place) })),
      ...troubles.flatMap((trouble) =>
        trouble.places.map((place) => ({ is: trouble.is, ...placeOf(place) })),
      ),
    ],
  };
}

/** The generator's words for a bypass that is set. */
const set = new Set(['yes', 'ja', 'sí', 'oui', 'sim', 'sì', 'x']);

function bypassed(text: string | null): boolean | null {
  return text === null ? null : set.has(text.toLowerCase());
}
