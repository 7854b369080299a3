import type { Attention, Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { sheetNames } from '../titles.ts';
import { levelHeaders, levels, placeText, subjectName, subjectThreshold } from './actionEntry.ts';
import { sourceOf } from '../links.ts';
import { severityStyle } from '../style/verdictStyles.ts';
import { leading } from '../style/layout.ts';
import type { LinkTarget } from '../model.ts';
import { heading, remark, type Entry } from './layout.ts';

/** What is critical is listed in full, and what is graver than some of it, as far as a sheet can hold it; the rest fills up. */
const mostCritical = 100_000;
const usual = 25;

/** What the list says of entries beside what they say themselves. */
interface ActionPlaces {
  /** Leads to the line of another result sheet on which it stands. */
  readonly lineOf: (one: Attention) => LinkTarget | undefined;
  /** Step of its instrument, in its unit; `null` where that is not known. */
  readonly stepOf: (one: Attention) => number | null;
}

/**
 * What needs action, one a line, gravest first: what is wrong, the panel reading until then, what to do, and where it stands.
 * */
export function actionLines(
  { attention, notRead }: Report,
  { lineOf, stepOf }: ActionPlaces,
): readonly (readonly Entry[])[] {
  if (attention.length === 0) {
    return [heading('Needs action'), ...(notRead.length === 0 ? [remark('Nothing needs action.')] : [])];
  }
  const lastCritical = attention.findLastIndex(({ severity }) => severity === 'critical');
  const listed = attention.slice(0, Math.max(usual, Math.min(lastCritical + 1, mostCritical)));
  const more = attention.length - listed.length;
  return [
    heading('Needs action, worst first'),
    [
      ...['Tag or group', 'Machine', 'Threshold', 'Severity'].map((text) => cell(text, 'header')),
      ...levelHeaders.map((text) => cell(text, 'headerCentred')),
      ...['What is wrong', 'Do next', 'Where'].map((text) => cell(text, 'header')),
    ],
    ...listed.map((one) => line(one, lineOf(one), stepOf(one))),
    ...(more > 0
      ? [
          remark(
            `And ${more} more: see “${sheetNames.results}”, “${sheetNames.groups}” and “${sheetNames.problems}”.`,
          ),
        ]
      : []),
  ];
}

function line(one: Attention, to: LinkTarget | undefined, step: number | null): readonly Entry[] {
  const [place] = one.places;
  return [
    leading(subjectName(one), 'name', to),
    cell(one.subject.machine, 'wrapped'),
    cell(subjectThreshold(one), 'wrapped'),
    cell(one.severity, severityStyle(one.severity)),
    ...levels(one, step),
    cell(one.headline, 'wrapped'),
    cell(one.doNext, 'wrapped'),
    leading(place ? placeText(place) : null, 'wrapped', place && sourceOf(place)),
  ];
}
