import type { JSX } from 'preact';
import { machineName } from '../../../sheets/machines.ts';
import { Said } from '../../parts/Said.tsx';
import { Badge } from './Badge.tsx';
import type { MachineRow } from './listRows.ts';
import { countsText, tripText } from './machineText.ts';
import { standingOf } from './standing.ts';

/** One machine of the list: how its worst channel stands, its name, its channels by how they stand, what still trips it. */
export function MachineLine({ machine, open }: MachineRow): JSX.Element {
  const [worst] = machine.channels;
  return (
    <>
      <span class="channel-first">
        <span class="turn" aria-hidden="true">
          {open ? '▾' : '▸'}
        </span>
        <b class="cut">
          <Said text={machineName(machine)} most={80} />
        </b>
        {worst && <Badge standing={standingOf(worst)} />}
      </span>
      <span class="cut">{countsText(machine)}</span>
      <span class="quiet cut">{tripText(machine)}</span>
    </>
  );
}
