import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { cellText } from '../../cells/cell.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Said } from '../parts/Said.tsx';
import { addressOf } from './formula.ts';
import type { CandidateCell } from './fromSelection.ts';
import type { Role } from './headerRole.ts';
import { quickMessages } from './quickMessages.ts';

interface AskRolesProps {
  readonly found: readonly CandidateCell[];
  readonly guess: readonly (Role | null)[];
  /** The user said what each cell is. */
  readonly onUse: (roles: readonly (Role | null)[]) => void;
}

const offered = ['danger', 'alert', 'configured', 'measured'] as const satisfies readonly Role[];

/** What each of a few cells is, where headers do not tell: a choice beside each cell with its value and header. */
export function AskRoles({ found, guess, onUse }: AskRolesProps): JSX.Element {
  const [roles, setRoles] = useState(guess);
  const used = roles.filter((role) => role !== null);
  const twice = new Set(used).size < used.length;
  const nothing = used.length < 2 || twice;
  return (
    <fieldset>
      <legend>{quickMessages.ask}</legend>
      <p class="quiet">{quickMessages.askHint}</p>
      {found.map(({ place, cell, header }, index) => (
        <div key={addressOf(place)} class="role">
          <span>
            <b>
              <Said text={cellText(cell)} most={30} />
            </b>{' '}
            <span class="quiet">
              <Said text={[addressOf(place), header].filter((text) => text !== '').join(', ')} most={80} />
            </span>
          </span>
          <ChoiceField
            label={quickMessages.askOf(addressOf(place))}
            labelHidden
            value={roles[index] ?? ''}
            choices={[
              { value: '', text: quickMessages.leaveOut },
              ...offered.map((role) => ({ value: role, text: quickMessages.roles[role] })),
            ]}
            onChoice={(value) => {
              setRoles(
                roles.map((role, at) =>
                  at === index ? (offered.find((one) => one === value) ?? null) : role,
                ),
              );
            }}
          />
        </div>
      ))}
      <div class="button-row">
        <button
          type="button"
          class="button button-first"
          disabled={nothing}
          onClick={() => {
            onUse(roles);
          }}
        >
          {quickMessages.use}
        </button>
      </div>
    </fieldset>
  );
}
