import type { CellPlace } from '../../hosts/port/port.ts';

export const cellFields = ['setpoint', 'configured', 'measured'] as const;
/** Fields that can be taken from cells, in the order in which they are taken. */
export type CellField = (typeof cellFields)[number];
export type QuickField = CellField | 'uncertainty';
export type SetpointKind = 'alert' | 'danger';

export const displacementUnits = ['mil', 'µm', 'mm'] as const;

export interface QuickState {
  /** What stands in each field, as it was typed or taken. */
  readonly texts: Readonly<Record<QuickField, string>>;
  readonly kind: SetpointKind;
  readonly unit: string;
  /** Cells from which fields were taken and that still stand as taken. */
  readonly sources: Readonly<Partial<Record<CellField, CellPlace>>>;
  /** What stood around those cells when they were taken. */
  readonly beside: Readonly<Partial<Record<CellField, string>>>;
}

export interface TakenCell {
  readonly field: CellField;
  /** `null`: the cell holds another number, as it is in another unit. */
  readonly place: CellPlace | null;
  readonly value: number;
  /** What stands around it. */
  readonly beside: string;
}

export type QuickAction =
  | { readonly type: 'typed'; readonly field: QuickField; readonly text: string }
  | { readonly type: 'kind'; readonly kind: SetpointKind }
  | { readonly type: 'unit'; readonly unit: string }
  | {
      readonly type: 'took';
      readonly cells: readonly TakenCell[];
      readonly kind: SetpointKind | null;
      readonly unit: string | null;
    };

export const emptyQuick: QuickState = {
  texts: { setpoint: '', configured: '', measured: '', uncertainty: '' },
  kind: 'danger',
  unit: 'mil',
  sources: {},
  beside: {},
};

/** The next state of the quick answer. A field that is typed over is no longer that of its cell; one that is not taken stays. */
export function quickReducer(state: QuickState, action: QuickAction): QuickState {
  switch (action.type) {
    case 'typed': {
      const sources = { ...state.sources };
      if (action.field !== 'uncertainty') Reflect.deleteProperty(sources, action.field);
      return { ...state, texts: { ...state.texts, [action.field]: action.text }, sources };
    }
    case 'kind':
      return { ...state, kind: action.kind };
    case 'unit':
      return { ...state, unit: action.unit };
    case 'took': {
      const sources = { ...state.sources };
      for (const { field, place } of action.cells) {
        if (place) sources[field] = place;
        else Reflect.deleteProperty(sources, field);
      }
      return {
        beside: {
          ...state.beside,
          ...Object.fromEntries(action.cells.map(({ field, beside }) => [field, beside])),
        },
        texts: {
          ...state.texts,
          ...Object.fromEntries(
            action.cells.map(({ field, value }) => [field, String(Number(value.toPrecision(12)))]),
          ),
        },
        kind: action.kind ?? state.kind,
        unit: action.unit ?? state.unit,
        sources,
      };
    }
  }
}
