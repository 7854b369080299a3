import type { ModelCell, ModelValue } from './model.ts';

/** A cell of a style; an empty one where there is no value. */
export function cell(value: ModelValue, style: string): ModelCell | undefined {
  return value === null || value === '' ? undefined : { value, style };
}

/** A number that a cell can hold; `null` where it is not given or not finite. */
export function finite(value: number | null): number | null {
  return value !== null && Number.isFinite(value) ? value : null;
}
