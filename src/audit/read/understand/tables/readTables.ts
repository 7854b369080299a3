import { cellText } from '../../../../cells/cell.ts';
import type { Sheet, Workbook } from '../../../../cells/sheet.ts';
import type { Steps } from '../../../model/steps.ts';
import { tagKey } from '../../tables/tagKey.ts';
import type { Block } from '../blocks/block.ts';
import { contextOf } from '../blocks/context.ts';
import { recordsOf } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { fieldsOf } from '../fields/fieldsOf.ts';
import { notedAbove, notedInLegend, withNoted } from '../fields/notes.ts';
import { statedZeroToPeak } from '../fields/otherDetection.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { hardQuantities } from '../meaning.ts';
import type { Answers } from '../answers/answers.ts';
import { withAnswers } from '../answers/apply.ts';
import { isCheckTable } from './checkTables.ts';
import type { Claim, Settled } from './claim.ts';
import { axesOf, type Lane } from './lane.ts';
import { headingsOf } from './headings.ts';
import { withHidden } from './hiddenTables.ts';
import { kindField } from './kindField.ts';
import { withHistories } from './histories.ts';
import { labelledMachine, machineOfHeading, machineOfSheet } from './machines.ts';
import { seriesOf } from './series.ts';
import { settle } from './settle.ts';
import { isOfAudit, type TableRead } from './tableRead.ts';
import { tagClaims } from './tags.ts';

/** Reads every block of a workbook as tables: fields, what they mean, what names their records, what machine they are of. */
export function* readTables(
  workbook: Workbook,
  blocks: readonly Block[],
  said: Answers,
): Steps<void, TableRead[]> {
  const sheets = new Map(workbook.sheets.map((sheet) => [sheet.name, sheet]));
  const fields = new Map<Block, Field[]>();
  for (const block of blocks) {
    fields.set(block, fieldsOf(block, sheets));
    yield;
  }
  const lanes = lanesOf(workbook, blocks, fields);
  const settled = new Map<Lane, Settled>();
  for (const lane of lanes) {
    settled.set(lane, withAnswers(lane, settle(lane), said));
    yield;
  }
  const ofAudit = lanes.filter((lane) => isOfAudit(settled.get(lane)?.claims ?? new Map()));
  const tags = tagClaims(
    ofAudit.map((lane) => {
      const claims = settled.get(lane)?.claims ?? new Map<never, Claim>();
      return { lane, taken: takenFields(claims), machine: claims.get('machine')?.field ?? null };
    }),
    sheets,
  );
  yield;
  const tables = lanes.map((lane): TableRead =>
    tableOf(lane, settled.get(lane) ?? { claims: new Map(), open: [] }, tags.get(lane) ?? null, sheets, said),
  );
  return withSheetMachines(withHidden(withHistories(tables, sheets)));
}

/** Fields that are something for sure, and so no tag: places may be both. */
function takenFields(claims: ReadonlyMap<string, Claim>): ReadonlySet<Field> {
  return new Set(
    [...claims].flatMap(([id, { field }]) =>
      id === 'tag' || id === 'location' || id === 'kind' ? [] : [field],
    ),
  );
}

function lanesOf(workbook: Workbook, blocks: readonly Block[], fields: ReadonlyMap<Block, Field[]>): Lane[] {
  const names = workbook.sheets.map(({ name }) => name);
  const withLists = new Set(
    blocks.filter((block) => (fields.get(block) ?? []).some(isQuantity)).map(({ sheet }) => sheet),
  );
  const aside = workbook.sheets.filter((sheet) => !withLists.has(sheet) && sheet.rows.length <= 400);
  const legends = aside.flatMap((sheet) => notedInLegend(sheet, names));
  const inLegends = aside.flatMap(statedZeroToPeak);
  const onSheets = new Map([...withLists].map((sheet) => [sheet, statedZeroToPeak(sheet)]));
  const lanes: Lane[] = [];
  for (const block of blocks) {
    const context = contextOf(block, blocks);
    const legend = legends.filter(({ sheets }) => sheets.length === 0 || sheets.includes(block.sheet.name));
    const naming = legend.filter(({ sheets }) => sheets.length > 0);
    const noted = [
      ...notedAbove(context.titles).map((unit) => ({ unit, scope: 'title' as const })),
      ...notedAbove(context.ofSheet).map((unit) => ({ unit, scope: 'note' as const })),
      ...(naming.length > 0 ? naming : legend).map((unit) => ({ unit, scope: 'legend' as const })),
    ];
    const own = (fields.get(block) ?? []).map((field) => withNoted(field, noted));
    const axes = axesOf(own);
    const parts = axes ?? [[null, new Set<Field>()] as const];
    for (const [axis, ofAxis] of parts) {
      const others = new Set((axes ?? []).flatMap(([other, set]) => (other === axis ? [] : [...set])));
      lanes.push({
        id: lanes.length,
        block,
        context,
        noted,
        zeroToPeak: [...(onSheets.get(block.sheet) ?? []), ...inLegends],
        fields: own.filter((field) => !others.has(field)),
        axis,
        ofAxis,
      });
    }
  }
  return lanes;
}

function isQuantity({ concepts, values, units }: Field): boolean {
  if (values.numbers === 0) return false;
  return (
    [...concepts.keys()].some((concept) => hardQuantities.has(concept) && concept !== 'date') ||
    units.some(({ stated }) => stated.unit?.dimension.includes('/'))
  );
}

function tableOf(
  lane: Lane,
  settled: Settled,
  tag: Claim | null,
  sheets: ReadonlyMap<string, Sheet>,
  said: Answers,
): TableRead {
  const claims = new Map(settled.claims);
  const own = claims.get('tag') ?? tag;
  const asked = own && own.field === tag?.field && tag.probe ? { ...own, probe: tag.probe } : own;
  if (asked) claims.set('tag', asked);
  for (const id of ['location', 'machine'] as const)
    if (asked && claims.get(id)?.field === asked.field) claims.delete(id);
  const answer = said.of(lane);
  const part =
    isOfAudit(claims) && asked && !isExplained(lane, claims)
      ? isHistory(lane, claims, asked, sheets)
        ? 'history'
        : 'channels'
      : answer === undefined && isCheckTable(lane, claims, settled.open)
        ? 'checks'
        : 'none';
  const machine = answer?.machine
    ? {
        name: answer.machine,
        evidence: { is: 'answer', of: 'person' } as const,
        standing: 'certain' as const,
      }
    : labelledMachine(lane);
  return {
    lane,
    part,
    claims,
    open: settled.open,
    tag: asked,
    kindField: claims.get('kind')?.field ?? kindField(lane, sheets),
    series: seriesOf(lane) ?? null,
    machine: claims.has('machine') ? null : machine,
    headings: part === 'channels' && !claims.has('machine') && !machine ? headingsOf(lane) : [],
    machineFromHeadings: answer?.machineFromHeadings === true,
    setAside: false,
    use: answer?.use ?? null,
    leftOut: answer?.use === false,
  };
}

/** A form whose labels have explanations beside them, and no number anywhere. */
function isExplained(lane: Lane, claims: ReadonlyMap<string, Claim>): boolean {
  return lane.block.lies === 'forms' && [...claims.values()].every(({ field }) => field.values.numbers === 0);
}

/** A list in which most tags come again with other dates: readings over time, not a list of channels. */
function isHistory(
  lane: Lane,
  claims: ReadonlyMap<string, Claim>,
  tag: Claim,
  sheets: ReadonlyMap<string, Sheet>,
): boolean {
  const date = claims.get('calibratedOn');
  if (!date || claims.has('configured') || claims.has('danger')) return false;
  const machine = claims.get('machine');
  const days = new Map<string, Set<string>>();
  let dated = 0;
  let of = '';
  for (const record of recordsOf(lane.block)) {
    const text = (field: Field) => cellText(cellOfBlock(lane.block, sheets, field.place, record));
    if (machine) of = text(machine.field) || of;
    const [day, name] = [text(date.field), text(tag.field)];
    if (day === '' || name === '') continue;
    dated++;
    const key = `${of}\n${tagKey(name)}`;
    days.set(key, (days.get(key) ?? new Set()).add(day));
  }
  const again = [...days.values()].filter(({ size }) => size > 1).length;
  return again > 0 && (again * 2 >= days.size || dated >= days.size * 1.5);
}

/** The names of sheets as machines, where several sheets hold lists that are alike and name no machine. */
function withSheetMachines(tables: readonly TableRead[]): TableRead[] {
  const alike = new Map<string, TableRead[]>();
  for (const table of tables) {
    if (
      table.part !== 'channels' ||
      table.claims.has('machine') ||
      table.machine ||
      table.lane.block.lies === 'forms'
    )
      continue;
    const key = [...table.claims.keys()].toSorted().join();
    alike.set(key, [...(alike.get(key) ?? []), table]);
  }
  const named = new Map<TableRead, TableRead>();
  for (const group of alike.values()) {
    const bySheet = new Set(group.map(({ lane }) => lane.block.sheet));
    const ofSheet = group.map(({ lane }) => machineOfSheet(lane));
    if (
      bySheet.size > 1 &&
      bySheet.size === new Set(group.map(({ lane }) => lane.block)).size &&
      ofSheet.every((machine) => machine !== null)
    ) {
      group.forEach((table, at) => named.set(table, { ...table, machine: ofSheet[at] ?? null }));
      continue;
    }
    if (group.length > 1)
      for (const table of group) named.set(table, { ...table, machine: machineOfHeading(table.lane) });
  }
  return tables.map((table) => named.get(table) ?? table);
}
