/** An object of Excel's, as requests reach it. Names begin with a capital letter, as they do in requests. */
export interface HostObject {
  readonly id?: string;
  readonly get?: Readonly<Record<string, () => unknown>>;
  readonly set?: Readonly<Record<string, (value: unknown) => void>>;
  /** Objects that belong to this one. */
  readonly parts?: Readonly<Record<string, () => HostObject | null>>;
  /** Methods, by arguments; those that stand in a path return an object, or `null` for one that is not there. */
  readonly methods?: Readonly<Record<string, (...args: unknown[]) => unknown>>;
  readonly item?: (key: unknown) => HostObject;
  readonly items?: () => readonly HostObject[];
  /** Excel keeps a reference to it while the library asks it to. */
  readonly isReferenced?: boolean;
}

export function isHostObject(value: unknown): value is HostObject {
  return (
    value instanceof Object && ['get', 'set', 'parts', 'methods', 'item', 'items'].some((key) => key in value)
  );
}
