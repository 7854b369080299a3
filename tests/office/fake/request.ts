/** What the library sends to Excel in one round trip, as far as it is used here. Undocumented; seen with version 1.1.110. */
export interface RequestBody {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

export interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

/** An argument that is an object stands as the number of its path, named once more in `ReferencedObjectPathIds`. */
export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[] | null;
}

export const actionType = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5 } as const;

export const pathType = {
  workbook: 1,
  method: 3,
  property: 4,
  indexer: 5,
  reference: 6,
  nothing: 7,
} as const;

/** Flag of a request that waits until the user has left a cell. */
export const delayForCellEdit = 64;

export interface ResponseBody {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly ActionIndex?: number };
}
