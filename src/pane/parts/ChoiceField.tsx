import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface ChoiceFieldProps {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly { readonly value: string; readonly text: string }[];
  readonly onChoice: (value: string) => void;
  /** The label is for readers of the screen aloud only; what stands around it says the same to the eye. */
  readonly labelHidden?: boolean;
}

/** A labelled list to choose one of. */
export function ChoiceField({ label, value, choices, onChoice, labelHidden }: ChoiceFieldProps): JSX.Element {
  const id = useId();
  return (
    <div class="field">
      <label for={id} class={labelHidden ? 'unseen' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          onChoice(event.currentTarget.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value} selected={choice.value === value}>
            {choice.text}
          </option>
        ))}
      </select>
    </div>
  );
}
