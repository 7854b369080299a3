import type { JSX } from 'preact';
import { useReducer, useEffect, useState } from 'preact/hooks';
import { SceneDrawing } from '../drawing/SceneDrawing.tsx';
import { quickScene } from '../drawing/quickScene.ts';
import { InsertFormula } from './InsertFormula.tsx';
import { readQuick, type QuickReading } from './quickAnswer.ts';
import {
  emptyQuick,
  quickReducer,
  displacementUnits,
  type QuickAction,
  type QuickField,
  type QuickState,
  type SetpointKind,
  cellFields,
  type CellField,
  type TakenCell,
} from './quickState.ts';
import { quickWords } from './quickWords.ts';
import { Notice } from '../parts/Notice.tsx';
import { useFollow } from './useFollow.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Said } from '../parts/Said.tsx';
import { TextField } from '../parts/TextField.tsx';
import { addressOf } from './formula.ts';
import { usePort } from '../app/paneContext.ts';
import { useDeed } from '../parts/useLongDeed.ts';
import { AskRoles } from './AskRoles.tsx';
import { notANumber } from '../../audit/advise/messages/phrases.ts';
import { type Cell, isBlank } from '../../cells/cell.ts';
import { readNumber } from '../../cells/number.ts';
import type { Area, Sheet } from '../../cells/sheet.ts';
import { convert } from '../../units/unit.ts';
import type { Unit } from '../../units/parse.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import { surroundings } from './follow.ts';
import { headerRole, type Role } from './headerRole.ts';
import { headerAbove, labelLeft } from './labels.ts';

/** A filled cell that could be meant, with what stands beside it. */
export interface Found {
  readonly place: CellPlace;
  readonly cell: Exclude<Cell, null>;
  /** As it stands above or left of it; empty where nothing does. */
  readonly header: string;
  readonly role: Role | null;
  readonly unit: Unit | null;
  readonly beside: string;
}

/** What is taken: fields that are not among its cells stay as they are. */
interface Take {
  readonly cells: readonly TakenCell[];
  /** `null`: not said. */
  readonly kind: SetpointKind | null;
  readonly unit: string | null;
  /** What a reader must know of how it was taken. */
  readonly said: readonly string[];
}

export type Taken =
  | { readonly take: Take }
  /** It is not certain which is which; `guess` has a role for each in question, or none. */
  | { readonly ask: readonly Found[]; readonly guess: readonly (Role | null)[] }
  | { readonly refusal: string };

/** Cells of which a person can be asked one by one. */
const mostAsked = 8;

/** Filled cells of a selection that are looked at; a row of a list has fewer. */
const mostCells = 300;

type FilledCell = Pick<Found, 'place' | 'cell'>;

interface TakeFromSelectionProps {
  readonly state: QuickState;
  readonly dispatch: (action: QuickAction) => void;
  /** Takes what is selected when the pane opens, too. */
  readonly atOnce: boolean;
}

interface QuickFieldsProps {
  readonly state: QuickState;
  readonly complaints: QuickReading['complaints'];
  readonly dispatch: (action: QuickAction) => void;
}

const kinds: readonly SetpointKind[] = ['danger', 'alert'];

/** One setpoint in, one sentence and one drawing out. `takeSelected`: it begins with what is selected. */
export function QuickView({ takeSelected }: { takeSelected: boolean }): JSX.Element {
  const [state, dispatch] = useReducer(quickReducer, emptyQuick);
  const lost = useFollow(state, dispatch);
  const { complaints, answer } = readQuick(state);
  const scene = answer && quickScene(state, answer);
  return (
    <>
      <h2>{quickWords.title}</h2>
      <TakeFromSelection state={state} dispatch={dispatch} atOnce={takeSelected} />
      {lost && <Notice tone="outdated">{quickWords.lost}</Notice>}
      <QuickFields state={state} complaints={complaints} dispatch={dispatch} />
      <div class="answer" aria-live="polite">
        {answer ? (
          <>
            <p class={`answer-sentence verdict-${answer.verdict}`}>{answer.sentence}</p>
            {answer.details.map((text) => (
              <p key={text} class="quiet">
                {text}
              </p>
            ))}
          </>
        ) : (
          <p class="quiet">{quickWords.waiting}</p>
        )}
      </div>
      {scene && <SceneDrawing scene={scene} />}
      {answer && <InsertFormula values={answer.values} sources={state.sources} />}
    </>
  );
}

/** The numbers that the quick answer is worked out from. */
function QuickFields({ state, complaints, dispatch }: QuickFieldsProps): JSX.Element {
  const field = (name: QuickField, unit?: string): JSX.Element => {
    const source = name === 'uncertainty' ? undefined : state.sources[name];
    return (
      <TextField
        label={quickWords[name]}
        value={state.texts[name]}
        numeric
        {...(unit === undefined ? {} : { unit })}
        hint={
          source && (
            <>
              {quickWords.from} <Said text={addressOf(source)} most={60} />
            </>
          )
        }
        complaint={complaints[name]}
        onText={(text) => {
          dispatch({ type: 'typed', field: name, text });
        }}
      />
    );
  };
  return (
    <div class="fields">
      <div class="field-pair">
        <ChoiceField
          label={quickWords.kind}
          value={state.kind}
          choices={kinds.map((kind) => ({ value: kind, text: quickWords[kind] }))}
          onChoice={(value) => {
            dispatch({ type: 'kind', kind: value === 'alert' ? 'alert' : 'danger' });
          }}
        />
        <ChoiceField
          label={quickWords.unit}
          value={state.unit}
          choices={[...new Set<string>([...displacementUnits, state.unit])].map((unit) => ({
            value: unit,
            text: unit,
          }))}
          onChoice={(unit) => {
            dispatch({ type: 'unit', unit });
          }}
        />
        {field('setpoint', state.unit)}
        {field('uncertainty', quickWords.uncertaintyUnit)}
        {field('configured')}
        {field('measured')}
      </div>
      {Object.keys(state.sources).length === 0 && <p class="field-hint">{quickWords.sensitivityHint}</p>}
    </div>
  );
}

/** Takes the numbers from the cells that are selected in the workbook by their headers, asks where these do not tell, and says which it took. */
function TakeFromSelection({ state, dispatch, atOnce }: TakeFromSelectionProps): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const [said, setSaid] = useState<readonly string[]>([]);
  const [took, setTook] = useState<string | null>(null);
  const [result, setResult] = useState<Taken | null>(null);
  const settle = (outcome: Taken, taken: (fields: readonly string[]) => string): void => {
    setResult(outcome);
    setSaid([]);
    setTook(null);
    if (!('take' in outcome)) return;
    const { cells, kind, unit, said: more } = outcome.take;
    const names = cells.map(({ field }) =>
      field === 'setpoint' && kind !== null ? quickWords[kind] : quickWords[field],
    );
    const others = cellFields.filter((field) => cells.every((cell) => cell.field !== field));
    const missing = others.filter((field) => state.texts[field].trim() === '');
    const kept = others.filter((field) => !missing.includes(field));
    setTook(taken(names));
    setSaid([
      ...more,
      ...(missing.length > 0 ? [quickWords.missing(missing.map((field) => quickWords[field]))] : []),
      ...(kept.length > 0 ? [quickWords.stays(kept.map((field) => quickWords[field]))] : []),
    ]);
    dispatch({ type: 'took', cells, kind, unit });
  };
  const take = async (): Promise<void> => {
    setResult(null);
    setTook(null);
    const selection = await port.readSelection();
    const { sheets } = await port.readWorkbook();
    const sheet = sheets.find(({ name }) => name === selection.sheet);
    settle(takeFrom(sheet ?? { name: selection.sheet, rows: [] }, selection.area), quickWords.took);
  };
  useEffect(() => {
    if (atOnce) deed.run(take);
  }, []);
  const problem = deed.refusal ?? (result && 'refusal' in result ? result.refusal : null);
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          deed.run(take);
        }}
      >
        {quickWords.take}
      </button>
      <span class="quiet" role="status">
        {took ?? quickWords.takeHint}
      </span>
      {problem !== null && (
        <Notice tone="problem">
          <Said text={problem} />
        </Notice>
      )}
      {result && 'ask' in result && (
        <AskRoles
          key={result.ask.map(({ place }) => `${place.sheet} ${place.row} ${place.column}`).join()}
          found={result.ask}
          guess={result.guess}
          onUse={(roles) => {
            settle(takeSaid(result.ask, roles), quickWords.tookSaid);
          }}
        />
      )}
      {said.length > 0 && (
        <Notice tone="note">
          <Said text={said.join(' ')} most={800} />
        </Notice>
      )}
    </div>
  );
}

/**
 * Takes setpoint and sensitivities from what is selected on a sheet, by headers and units: three cells, a row of a list, one
 * cell of it, or a column whose labels stand to the left. Asks where headers do not tell, and never goes by the order alone.
 */
export function takeFrom(sheet: Pick<Sheet, 'name' | 'rows'>, area: Area): Taken {
  const own = numbersIn(sheet, area);
  if (own.length >= 2) return byRoles(own, area);
  const row = numbersIn(sheet, { top: area.top, bottom: area.top, left: 1, right: Infinity });
  if (rolesOf(row).size >= 2) return byRoles(row, area);
  const column = numbersIn(sheet, { top: 1, bottom: Infinity, left: area.left, right: area.left });
  if (rolesOf(column).size >= 2) return byRoles(column, area);
  const below = rowBelow(sheet, area);
  if (below) return byRoles(below, area);
  return { refusal: quickWords.tooFew(filledCells(sheet, area).length) };
}

/** What a person said of cells, as it is taken. */
export function takeSaid(found: readonly Found[], roles: readonly (Role | null)[]): Taken {
  const said = found.map((one, index): Found => ({ ...one, role: roles[index] ?? null }));
  return byRoles(
    said.filter(({ role }) => role !== null),
    null,
  );
}

function byRoles(found: readonly Found[], area: Area | null): Taken {
  const setpoints = (['danger', 'alert', 'setpoint'] as const)
    .map((role) => found.filter((one) => one.role === role))
    .filter((own) => own.length > 0);
  const configured = found.filter(({ role }) => role === 'configured');
  const measured = found.filter(({ role }) => role === 'measured');
  const unclear = found.some(({ role }) => role === 'sensitivity');
  const groups = [...setpoints, configured, measured];
  const several = groups.some((own) => own.length > 1);
  const alike = groups.some((own) => new Set(own.map(({ header }) => header)).size < own.length);
  if (alike && area !== null) return { refusal: quickWords.severalRows };
  const told = setpoints.length > 0 || configured.length > 0 || measured.length > 0;
  const sure =
    told && !several && !unclear && !(setpoints.length === 2 && setpoints[1]?.[0]?.role === 'setpoint');
  // Three cells that were selected are all meant: one without a role is a question.
  const chosen = area !== null && found.length <= 3 && found.some(({ role }) => role === null);
  if (area !== null && (!sure || chosen)) return asked(found);
  const [setpoint] = setpoints[0] ?? [];
  return taken(setpoint ?? null, configured[0] ?? null, measured[0] ?? null, setpoints[1]?.[0] ?? null);
}

function asked(found: readonly Found[]): Taken {
  const meant = found.filter(({ role }) => role !== null);
  const shown = found.length <= mostAsked ? found : meant;
  if (shown.length === 0 || shown.length > mostAsked) return { refusal: quickWords.tooMany(found.length) };
  return { ask: shown, guess: guessed(shown) };
}

/** What headers say; what they leave open stays open, but for the one role that is left for the one cell that is. */
function guessed(found: readonly Found[]): readonly (Role | null)[] {
  const roles = found.map(({ role }) => (role === 'sensitivity' ? null : role));
  const open = roles.filter((role) => role === null).length;
  if (open !== 1 || found.length !== 3) return roles;
  const has = new Set(roles);
  const left = (['configured', 'measured'] as const).filter((role) => !has.has(role));
  const isSet = has.has('danger') || has.has('alert') || has.has('setpoint');
  const [sensitivity = null, ...more] = left;
  const only = sensitivity === null && !isSet ? 'danger' : more.length === 0 ? sensitivity : null;
  return roles.map((role) => role ?? only);
}

function taken(
  setpoint: Found | null,
  configured: Found | null,
  measured: Found | null,
  other: Found | null,
): Taken {
  const cells: TakenCell[] = [];
  const said: string[] = [];
  for (const [field, found] of [
    ['setpoint', setpoint],
    ['configured', configured],
    ['measured', measured],
  ] as const satisfies readonly (readonly [CellField, Found | null])[]) {
    if (!found) continue;
    const read = readNumber(found.cell, undefined);
    if ('why' in read) return { refusal: quickWords.noNumber(addressOf(found.place), notANumber[read.why]) };
    cells.push({ field, place: found.place, value: read.value, beside: found.beside });
  }
  const [from, to] = [measured?.unit ?? null, configured?.unit ?? null];
  if (from && to && from.text !== to.text) {
    const at = cells.findIndex(({ field }) => field === 'measured');
    const value = convert(cells[at]?.value ?? NaN, from, to);
    if (Number.isNaN(value)) return { refusal: quickWords.otherUnits(from.text, to.text) };
    cells[at] = { field: 'measured', place: null, value, beside: '' };
    said.push(quickWords.converted(from.text, to.text));
  } else if (configured && measured && (from === null) !== (to === null)) {
    said.push(quickWords.oneUnit(from ? 'measured' : 'configured', (from ?? to)?.text ?? ''));
  }
  if (other && setpoint) said.push(quickWords.otherSetpoint(addressOf(other.place)));
  const role = setpoint?.role;
  return {
    take: {
      cells,
      kind: role === 'danger' || role === 'alert' ? role : null,
      unit: setpoint?.unit?.text ?? null,
      said,
    },
  };
}

/** The only row of numbers below a header. */
function rowBelow(sheet: Pick<Sheet, 'name' | 'rows'>, { top, left }: Area): readonly Found[] | null {
  const rows = sheet.rows.flatMap((cells, index) =>
    index >= top && typeof cells[left - 1] === 'number' ? [index + 1] : [],
  );
  const [row] = rows;
  if (row === undefined || rows.length > 1) return null;
  const found = numbersIn(sheet, { top: row, bottom: row, left: 1, right: Infinity });
  return rolesOf(found).size >= 2 ? found : null;
}

/** What the numbers among cells are. */
function rolesOf(found: readonly Found[]): Set<Role> {
  return new Set(
    found.flatMap(({ role, cell }) => (role === null || 'why' in readNumber(cell, undefined) ? [] : [role])),
  );
}

/** Filled cells of an area that hold a number, or something else under a header that a number is expected under. */
function numbersIn(sheet: Pick<Sheet, 'name' | 'rows'>, area: Area): readonly Found[] {
  const filled = filledCells(sheet, area).slice(0, mostCells);
  const withHeader = ({ place, cell }: FilledCell, header: string | null): Found => {
    const { role, unit } = header === null ? { role: null, unit: null } : headerRole(header);
    const beside = surroundings(sheet.rows, place.row, place.column);
    return { place, cell, header: header ?? '', role, unit, beside };
  };
  const byColumns = filled.map((one) =>
    withHeader(one, headerAbove(sheet.rows, one.place.row, one.place.column)),
  );
  const byRows = filled.map((one) => withHeader(one, labelLeft(sheet.rows, one.place.row, one.place.column)));
  const better = rolesOf(byRows).size > rolesOf(byColumns).size ? byRows : byColumns;
  return better.filter(
    ({ cell, role, header }) => !('why' in readNumber(cell, undefined)) || (role !== null && header !== ''),
  );
}

function filledCells(
  { name, rows }: Pick<Sheet, 'name' | 'rows'>,
  { top, left, bottom, right }: Area,
): FilledCell[] {
  return rows
    .slice(top - 1, bottom)
    .flatMap((cells, down) =>
      cells
        .slice(left - 1, right)
        .flatMap((cell, across) =>
          cell === null || isBlank(cell)
            ? []
            : [{ cell, place: { sheet: name, row: top + down, column: left + across } }],
        ),
    );
}
