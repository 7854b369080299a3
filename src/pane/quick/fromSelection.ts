import { notANumber } from '../../audit/advise/messages/phrases.ts';
import { type Cell, isBlank } from '../../cells/cell.ts';
import { readNumber } from '../../cells/number.ts';
import type { Area, Sheet } from '../../cells/sheet.ts';
import { convert } from '../../units/unit.ts';
import type { Unit } from '../../units/parse.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import { surroundings } from './follow.ts';
import { addressOf } from './formula.ts';
import { headerRole, type Role } from './headerRole.ts';
import { headerAbove, labelLeft } from './labels.ts';
import type { CellField, SetpointKind, TakenCell } from './quickState.ts';
import { quickMessages } from './quickMessages.ts';

/** A filled cell that could be meant, with what stands beside it. */
export interface CandidateCell {
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
  | { readonly ask: readonly CandidateCell[]; readonly guess: readonly (Role | null)[] }
  | { readonly refusal: string };

/** Cells of which a person can be asked one by one. */
const mostAsked = 8;
/** Filled cells of a selection that are looked at; a row of a list has fewer. */
const mostCells = 300;

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
  return { refusal: quickMessages.tooFew(filledCells(sheet, area).length) };
}

/** What a person said of cells, as it is taken. */
export function takeByRoles(found: readonly CandidateCell[], roles: readonly (Role | null)[]): Taken {
  const said = found.map((one, index): CandidateCell => ({ ...one, role: roles[index] ?? null }));
  return byRoles(
    said.filter(({ role }) => role !== null),
    null,
  );
}

function byRoles(found: readonly CandidateCell[], area: Area | null): Taken {
  const setpoints = (['danger', 'alert', 'setpoint'] as const)
    .map((role) => found.filter((one) => one.role === role))
    .filter((own) => own.length > 0);
  const configured = found.filter(({ role }) => role === 'configured');
  const measured = found.filter(({ role }) => role === 'measured');
  const unclear = found.some(({ role }) => role === 'sensitivity');
  const groups = [...setpoints, configured, measured];
  const several = groups.some((own) => own.length > 1);
  const alike = groups.some((own) => new Set(own.map(({ header }) => header)).size < own.length);
  if (alike && area !== null) return { refusal: quickMessages.severalRows };
  const told = setpoints.length > 0 || configured.length > 0 || measured.length > 0;
  const sure =
    told && !several && !unclear && !(setpoints.length === 2 && setpoints[1]?.[0]?.role === 'setpoint');
  // Three cells that were selected are all meant: one without a role is a question.
  const chosen = area !== null && found.length <= 3 && found.some(({ role }) => role === null);
  if (area !== null && (!sure || chosen)) return asked(found);
  const [setpoint] = setpoints[0] ?? [];
  return taken(setpoint ?? null, configured[0] ?? null, measured[0] ?? null, setpoints[1]?.[0] ?? null);
}

function asked(found: readonly CandidateCell[]): Taken {
  const meant = found.filter(({ role }) => role !== null);
  const shown = found.length <= mostAsked ? found : meant;
  if (shown.length === 0 || shown.length > mostAsked) return { refusal: quickMessages.tooMany(found.length) };
  return { ask: shown, guess: guessed(shown) };
}

/** What headers say; what they leave open stays open, but for the one role that is left for the one cell that is. */
function guessed(found: readonly CandidateCell[]): readonly (Role | null)[] {
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
  setpoint: CandidateCell | null,
  configured: CandidateCell | null,
  measured: CandidateCell | null,
  other: CandidateCell | null,
): Taken {
  const cells: TakenCell[] = [];
  const said: string[] = [];
  for (const [field, found] of [
    ['setpoint', setpoint],
    ['configured', configured],
    ['measured', measured],
  ] as const satisfies readonly (readonly [CellField, CandidateCell | null])[]) {
    if (!found) continue;
    const read = readNumber(found.cell, undefined);
    if ('why' in read)
      return { refusal: quickMessages.noNumber(addressOf(found.place), notANumber[read.why]) };
    cells.push({ field, place: found.place, value: read.value, beside: found.beside });
  }
  const [from, to] = [measured?.unit ?? null, configured?.unit ?? null];
  if (from && to && from.text !== to.text) {
    const at = cells.findIndex(({ field }) => field === 'measured');
    const value = convert(cells[at]?.value ?? NaN, from, to);
    if (Number.isNaN(value)) return { refusal: quickMessages.otherUnits(from.text, to.text) };
    cells[at] = { field: 'measured', place: null, value, beside: '' };
    said.push(quickMessages.converted(from.text, to.text));
  } else if (configured && measured && (from === null) !== (to === null)) {
    said.push(quickMessages.oneUnit(from ? 'measured' : 'configured', (from ?? to)?.text ?? ''));
  }
  if (other && setpoint) said.push(quickMessages.otherSetpoint(addressOf(other.place)));
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
function rowBelow(sheet: Pick<Sheet, 'name' | 'rows'>, { top, left }: Area): readonly CandidateCell[] | null {
  const rows = sheet.rows.flatMap((cells, index) =>
    index >= top && typeof cells[left - 1] === 'number' ? [index + 1] : [],
  );
  const [row] = rows;
  if (row === undefined || rows.length > 1) return null;
  const found = numbersIn(sheet, { top: row, bottom: row, left: 1, right: Infinity });
  return rolesOf(found).size >= 2 ? found : null;
}

/** What the numbers among cells are. */
function rolesOf(found: readonly CandidateCell[]): Set<Role> {
  return new Set(
    found.flatMap(({ role, cell }) => (role === null || 'why' in readNumber(cell, undefined) ? [] : [role])),
  );
}

/** Filled cells of an area that hold a number, or something else under a header that a number is expected under. */
function numbersIn(sheet: Pick<Sheet, 'name' | 'rows'>, area: Area): readonly CandidateCell[] {
  const filled = filledCells(sheet, area).slice(0, mostCells);
  const withHeader = ({ place, cell }: FilledCell, header: string | null): CandidateCell => {
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

type FilledCell = Pick<CandidateCell, 'place' | 'cell'>;

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
