import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { defaultPolicy, type Policy } from '../../../audit/model/policy.ts';
import { Help } from '../../help/Help.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { policyParts } from './policyFields.ts';
import { policyTexts, readPolicy, type PolicyTexts } from './policyForm.ts';

/** Texts of the policy form; those of its fields stand with them. */
const policyMessages = {
  title: 'Policy',
  intro: 'What the site accepts. What is used stands in every result. Kept in this workbook.',
  rule: 'Decision rule',
  ruleHelp:
    'Guarded calls a channel OK only where all of its uncertainty lies inside the tolerance. Simple looks at the value alone.',
  guarded: 'Guarded: all of the band must be inside',
  simple: 'Simple: the value alone decides',
  apply: 'Use this policy',
  reset: 'Back to defaults',
  applied: 'This policy holds from the next run on.',
  wrong: 'Correct the marked fields first.',
  changed: (count: number) =>
    `${count} ${count === 1 ? 'entry differs' : 'entries differ'} from the defaults`,
  defaults: 'All as by default',
} as const;

interface PolicyFormProps {
  readonly policy: Policy;
  readonly onPolicy: (policy: Policy) => void;
}

/** The policy as a form: defaults filled in, wrong entries said beside them, nothing used before it is all right. */
export function PolicyForm({ policy, onPolicy }: PolicyFormProps): JSX.Element {
  const [texts, setTexts] = useState<PolicyTexts>(() => policyTexts(policy));
  const [tried, setTried] = useState<'no' | 'wrong' | 'applied'>('no');
  const { policy: read, faults } = readPolicy(texts);
  const standard = policyTexts(defaultPolicy);
  const held = policyTexts(policy);
  const differing = Object.keys(standard).filter((path) => held[path] !== standard[path]).length;
  const set = (path: string, text: string): void => {
    setTexts({ ...texts, [path]: text });
    setTried('no');
  };
  const use = (next: Policy | null): void => {
    setTried(next ? 'applied' : 'wrong');
    if (next) onPolicy(next);
  };
  return (
    <details class="part">
      <summary>
        {policyMessages.title}{' '}
        <span class="quiet">
          {differing === 0 ? policyMessages.defaults : policyMessages.changed(differing)}
        </span>
      </summary>
      <p class="quiet">{policyMessages.intro}</p>
      <Help about={policyMessages.rule}>{policyMessages.ruleHelp}</Help>
      <ChoiceField
        label={policyMessages.rule}
        value={texts['rule'] ?? ''}
        choices={[
          { value: 'guarded', text: policyMessages.guarded },
          { value: 'simple', text: policyMessages.simple },
        ]}
        onChoice={(rule) => {
          set('rule', rule);
        }}
      />
      {policyParts.map(({ title, fields }) => (
        <fieldset key={title}>
          <legend>{title}</legend>
          {fields.map(({ path, label, unit, holds, help }) => (
            <TextField
              key={path}
              label={label}
              help={help}
              value={texts[path] ?? ''}
              numeric={holds === 'number'}
              {...(unit === undefined ? {} : { unit })}
              fault={faults[path]}
              onText={(text) => {
                set(path, text);
              }}
            />
          ))}
        </fieldset>
      ))}
      {tried === 'wrong' && <Notice tone="problem">{policyMessages.wrong}</Notice>}
      {tried === 'applied' && <Notice tone="done">{policyMessages.applied}</Notice>}
      <div class="button-row">
        <button
          type="button"
          class="button button-first"
          onClick={() => {
            use(read);
          }}
        >
          {policyMessages.apply}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => {
            setTexts(standard);
            use(defaultPolicy);
          }}
        >
          {policyMessages.reset}
        </button>
      </div>
    </details>
  );
}
