import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { correctFirstLine } from '../../../audit/advise/machineSentences.ts';
import { correctableTags, whatIf } from '../../../audit/advise/whatIf.ts';
import type { MachineChance } from '../../../audit/model/report.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditMessages } from '../auditMessages.ts';
import { lateWords, whatIfMessages } from './whatIfMessages.ts';

interface WhatIfProps {
  readonly machines: readonly MachineChance[];
  /** The machine that is chosen in the list: asked about until another is chosen here. */
  readonly shown: MachineChance | undefined;
}

/** Ticks channels of a machine as corrected and says what of it may still be late. */
export function WhatIf({ machines, shown }: WhatIfProps): JSX.Element | null {
  const [picked, setAt] = useState<number | null>(null);
  const [ticked, setCorrected] = useState<ReadonlySet<string>>(new Set());
  const at = picked ?? Math.max(0, shown ? machines.indexOf(shown) : 0);
  const machine = machines[at] ?? machines[0];
  if (!machine) return null;
  const first = correctFirstLine(machine);
  const tags = correctableTags(machine);
  const corrected = new Set(tags.filter((tag) => ticked.has(tag)));
  const tick = (tag: string, on: boolean): void => {
    setCorrected(new Set(on ? [...corrected, tag] : [...corrected].filter((other) => other !== tag)));
  };
  return (
    <Fold part title={whatIfMessages.title}>
      <p class="quiet">{whatIfMessages.intro}</p>
      {machines.length > 1 && (
        <label>
          {whatIfMessages.machine}{' '}
          <select
            value={String(at)}
            onChange={({ currentTarget }) => {
              setAt(Number(currentTarget.value));
              setCorrected(new Set());
            }}
          >
            {machines.map(({ machine: name }, index) => (
              <option key={index} value={String(index)}>
                {name === '' ? auditMessages.noMachine : name.slice(0, 60)}
              </option>
            ))}
          </select>
        </label>
      )}
      {first !== null && (
        <p>
          <Said text={first} most={300} />
        </p>
      )}
      <fieldset>
        <legend>{whatIfMessages.channels}</legend>
        {tags.map((tag) => (
          <label key={tag} class="block">
            <input
              type="checkbox"
              checked={corrected.has(tag)}
              onChange={({ currentTarget }) => {
                tick(tag, currentTarget.checked);
              }}
            />{' '}
            <Said text={tag} most={60} />
          </label>
        ))}
      </fieldset>
      {corrected.size > 0 && (
        <button
          type="button"
          onClick={() => {
            setCorrected(new Set());
          }}
        >
          {whatIfMessages.none}
        </button>
      )}
      <p>
        <b>{whatIfMessages.now}:</b> {lateWords(machine, machine.groups)}
      </p>
      <p role="status">
        {corrected.size > 0 && (
          <>
            <b>{whatIfMessages.then(corrected.size)}:</b>{' '}
            {lateWords(whatIf(machine, corrected), machine.groups)}
          </>
        )}
      </p>
      <p class="quiet">{whatIfMessages.ofMeasurement}</p>
    </Fold>
  );
}
