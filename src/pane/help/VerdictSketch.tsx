import type { JSX } from 'preact';
import type { Standing } from '../audit/channels/standing.ts';

/** Where the marks of a sketch stand: set, really, the ends of a band, a wall that is never reached. */
interface Marks {
  readonly set: number;
  readonly really?: number;
  readonly band?: readonly [from: number, to: number];
  readonly wall?: number;
}

const marks: Readonly<Record<Standing, Marks>> = {
  unreachable: { set: 84, wall: 66 },
  late: { set: 50, really: 86 },
  undetermined: { set: 64, band: [40, 94] },
  early: { set: 80, really: 44 },
  incomplete: { set: 64 },
  within: { set: 64, really: 64 },
  'in bypass': { set: 64 },
};

/** A verdict as the drawings show it: a ring where it is set, a diamond where it really acts. */
export function VerdictSketch({ standing }: { standing: Standing }): JSX.Element {
  const { set, really, band, wall } = marks[standing];
  return (
    <svg
      class={`sketch lane lane-${standing === 'in bypass' ? 'unreachable' : standing}`}
      width="120"
      height="20"
      viewBox="0 0 120 20"
      aria-hidden="true"
    >
      <line class="lane-line" x1={2} x2={wall ?? 118} y1={10} y2={10} />
      {wall !== undefined && <path class="sketch-wall" d={`M${wall},2v16`} />}
      {band && <rect class="lane-band" x={band[0]} width={band[1] - band[0]} y={3} height={14} rx={2} />}
      {really !== undefined && <line class="lane-shift" x1={set} x2={really} y1={10} y2={10} />}
      <circle class="lane-intended" cx={set} cy={10} r={5} />
      {really !== undefined && <path class="lane-effective" d={`M${really},3l6,7l-6,7l-6,-7z`} />}
    </svg>
  );
}
