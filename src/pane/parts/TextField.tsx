import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';
import { Help } from '../help/Help.tsx';

interface TextFieldProps {
  readonly label: ComponentChildren;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly unit?: string;
  /** Said inside while it is empty; no label. */
  readonly placeholder?: string;
  readonly hint?: ComponentChildren;
  /** A sentence behind a question mark beside the label; then the label must be a text. */
  readonly help?: string | undefined;
  readonly fault?: string | undefined;
  readonly numeric?: boolean;
  readonly onCommit?: () => void;
}

/** A labelled text field with its unit, a hint, and what is wrong with what was entered. */
export function TextField(props: TextFieldProps): JSX.Element {
  const { label, value, onText, unit, placeholder, hint, help, fault, numeric = false, onCommit } = props;
  const id = useId();
  const described = [hint ? `${id}-hint` : '', fault ? `${id}-complaint` : ''].filter((part) => part !== '');
  return (
    <div class="field">
      {help === undefined ? (
        <label for={id}>{label}</label>
      ) : (
        <span class="label-row">
          <label for={id}>{label}</label>
          <Help about={typeof label === 'string' ? label : ''}>{help}</Help>
        </span>
      )}
      <span class="field-box">
        <input
          id={id}
          type="text"
          inputMode={numeric ? 'decimal' : 'text'}
          autocomplete="off"
          spellcheck={false}
          value={value}
          placeholder={placeholder}
          aria-invalid={fault ? true : undefined}
          aria-describedby={described.length > 0 ? described.join(' ') : undefined}
          onInput={(event) => {
            onText(event.currentTarget.value);
          }}
          onChange={onCommit}
        />
        {unit !== undefined && <span class="field-unit">{unit}</span>}
      </span>
      {hint !== undefined && hint !== '' && (
        <span class="field-hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {fault !== undefined && (
        <span class="field-complaint" id={`${id}-complaint`} role="alert">
          {fault}
        </span>
      )}
    </div>
  );
}
