import type { JSX } from 'preact';
import type { RecordResult } from '../../../audit/model/report.ts';
import { rounded } from '../../../audit/model/wording.ts';
import { recordWords } from './recordWords.ts';

/** The points of a record in numbers; a step stands beside the point that it leads to. */
export function RecordTable({ record: { points, gapUnit } }: { record: RecordResult }): JSX.Element {
  const said = (value: number | null | undefined): string =>
    value === null || value === undefined ? recordWords.none : rounded(value);
  return (
    <table class="record-table">
      <caption class="quiet">{recordWords.heading}</caption>
      <thead>
        <tr>
          {recordWords.columns(gapUnit).map((header) => (
            <th key={header} scope="col">
              {header}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {points.map(({ gap, volts, deviation }, at) => (
          <tr key={gap}>
            <th scope="row">{rounded(gap)}</th>
            <td>{said(volts)}</td>
            <td>{said(points[at - 1]?.incremental)}</td>
            <td>{said(deviation)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
