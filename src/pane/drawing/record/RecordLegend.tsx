import type { JSX } from 'preact';
import type { RecordScene } from './recordScene.ts';
import { recordWords } from './recordWords.ts';

/** What each mark of a record's drawing means; only marks that it has. */
export function RecordLegend({ scene }: { scene: RecordScene }): JSX.Element {
  const looks = new Set(
    [scene.volts, scene.deviation, scene.steps].flatMap(({ lines }) => lines.map(({ look }) => look)),
  );
  const lines = (['measured', 'rated', 'fitted', 'tolerance'] as const).filter((look) => looks.has(look));
  return (
    <figcaption class="legend" aria-hidden="true">
      {lines.map((look) => (
        <Entry key={look} name={recordWords[look]}>
          <line class={`record-line record-${look}`} x1={0} x2={24} y1={8} y2={8} />
        </Entry>
      ))}
      {scene.operating && (
        <Entry name={recordWords.operating}>
          <path class="record-operating" d="M12,1l5,7l-5,7l-5,-7z" />
        </Entry>
      )}
      {scene.danger && (
        <Entry name={recordWords.danger}>
          <rect class="record-danger" x={2} y={2} width={20} height={12} />
        </Entry>
      )}
      {scene.linear && (
        <Entry name={recordWords.linear}>
          <line class="record-linear" x1={0} x2={24} y1={8} y2={8} />
        </Entry>
      )}
    </figcaption>
  );
}

function Entry({ name, children }: { name: string; children: JSX.Element }): JSX.Element {
  return (
    <span class="legend-entry">
      <svg width="24" height="16" viewBox="0 0 24 16">
        {children}
      </svg>
      {name}
    </span>
  );
}
