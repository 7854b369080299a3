import type { JSX } from 'preact';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Said } from '../parts/Said.tsx';
import { TextField } from '../parts/TextField.tsx';
import { addressOf } from './formula.ts';
import type { QuickReading } from './quickAnswer.ts';
import {
  displacementUnits,
  type QuickAction,
  type QuickField,
  type QuickState,
  type SetpointKind,
} from './quickState.ts';
import { quickMessages } from './quickMessages.ts';

interface QuickFieldsProps {
  readonly state: QuickState;
  readonly faults: QuickReading['faults'];
  readonly dispatch: (action: QuickAction) => void;
}

const kinds: readonly SetpointKind[] = ['danger', 'alert'];

/** The numbers that the quick answer is worked out from. */
export function QuickFields({ state, faults, dispatch }: QuickFieldsProps): JSX.Element {
  const field = (name: QuickField, unit?: string): JSX.Element => {
    const source = name === 'uncertainty' ? undefined : state.sources[name];
    return (
      <TextField
        label={quickMessages[name]}
        value={state.texts[name]}
        numeric
        {...(unit === undefined ? {} : { unit })}
        hint={
          source && (
            <>
              {quickMessages.from} <Said text={addressOf(source)} most={60} />
            </>
          )
        }
        fault={faults[name]}
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
          label={quickMessages.kind}
          value={state.kind}
          choices={kinds.map((kind) => ({ value: kind, text: quickMessages[kind] }))}
          onChoice={(value) => {
            dispatch({ type: 'kind', kind: value === 'alert' ? 'alert' : 'danger' });
          }}
        />
        <ChoiceField
          label={quickMessages.unit}
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
        {field('uncertainty', quickMessages.uncertaintyUnit)}
        {field('configured')}
        {field('measured')}
      </div>
      {Object.keys(state.sources).length === 0 && <p class="field-hint">{quickMessages.sensitivityHint}</p>}
    </div>
  );
}
