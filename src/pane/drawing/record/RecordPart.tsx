import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Policy } from '../../../audit/model/policy.ts';
import type { ChannelResult, RecordResult } from '../../../audit/model/report.ts';
import { amount, rounded } from '../../../audit/model/wording.ts';
import { shownRecord } from '../../../sheets/records/fromReport.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Said } from '../../parts/Said.tsx';
import { RecordDrawing } from './RecordDrawing.tsx';
import { recordScene } from './recordScene.ts';
import { recordMessages } from './recordMessages.ts';

interface RecordPartProps {
  readonly channel: ChannelResult;
  readonly record: RecordResult;
  readonly policy: Policy;
}

/** A channel's calibration record: where it stands, its drawing, and its points as a table. */
export function RecordPart({ channel, record, policy }: RecordPartProps): JSX.Element {
  const shown = useMemo(() => shownRecord(channel, record, policy), [channel, record, policy]);
  const scene = useMemo(() => recordScene(channel, record, shown), [channel, record, shown]);
  const temperature = record.temperature === '' ? '' : `temperature ${record.temperature}`;
  const about = [record.series, temperature, record.takenOn ?? ''].filter((text) => text !== '');
  return (
    <>
      <h4>{recordMessages.heading}</h4>
      <p class="quiet">
        <Said text={[...about, `${record.sheet}, row ${record.row}`].join(', ')} most={160} />
        {`: ${amount(record.average, `mV/${record.gapUnit}`)} on average.`}
      </p>
      {scene && <RecordDrawing scene={scene} result={record} />}
      {shown.others.map((text) => (
        <p key={text} class="quiet">
          <Said text={text} most={200} />
        </p>
      ))}
      <Fold title={recordMessages.table}>
        <RecordTable record={record} />
      </Fold>
    </>
  );
}

/** The points of a record in numbers; a step stands beside the point that it leads to. */
function RecordTable({ record: { points, gapUnit } }: { record: RecordResult }): JSX.Element {
  const said = (value: number | null | undefined): string =>
    value === null || value === undefined ? recordMessages.none : rounded(value);
  return (
    <table class="record-table">
      <caption class="quiet">{recordMessages.heading}</caption>
      <thead>
        <tr>
          {recordMessages.columns(gapUnit).map((header) => (
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
