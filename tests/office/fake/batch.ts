import { HostError, invalidArgument } from './hostError.ts';
import { type HostObject, isHostObject } from './hostObject.ts';
import {
  type Action,
  actionType,
  type ArgumentInfo,
  pathType,
  type RequestBody,
  type ResponseBody,
} from './request.ts';

/** References that the library asked to be kept from one request to the next. */
export type References = Map<string, HostObject>;

/** Called before each action; may throw a HostError for it. */
export type BeforeAction = (action: Action) => void;

/**
 * Carries out the actions of a request in order. As in Excel, the first that fails ends it, and those before it stay done.
 */
export function carryOut(
  body: RequestBody,
  workbook: HostObject,
  references: References,
  before: BeforeAction,
): ResponseBody {
  const objects = new Objects(body, workbook, references);
  const results: { ActionId: number; Value: unknown }[] = [];
  for (const [index, action] of body.Actions.entries()) {
    try {
      before(action);
      results.push({ ActionId: action.Id, Value: objects.valueOf(action) });
    } catch (error) {
      if (!(error instanceof HostError)) throw error;
      return { Results: results, Error: { Code: error.code, Message: error.message, ActionIndex: index } };
    }
  }
  return { Results: results };
}

class Objects {
  readonly #known = new Map<number, HostObject | null>();
  readonly #kept = new Map<number, string>();

  constructor(
    readonly body: RequestBody,
    readonly workbook: HostObject,
    readonly references: References,
  ) {}

  valueOf(action: Action): unknown {
    if (action.ActionType === actionType.trace) return null;
    const object = this.#at(action.ObjectPathId);
    if (action.ActionType === actionType.instantiate) return this.#identity(action.ObjectPathId, object);
    if (object === null) return null;
    const args = this.#arguments(action.ArgumentInfo);
    switch (action.ActionType) {
      case actionType.query:
        return queried(object, action.QueryInfo?.Select ?? []);
      case actionType.method:
        return this.#call(object, action, args);
      case actionType.setProperty: {
        const setter = object.set?.[action.Name] ?? unknownName(action.Name);
        setter(args[0]);
        return null;
      }
      default:
        throw new Error(`actions of type ${action.ActionType} are not modelled`);
    }
  }

  #call(object: HostObject, { Name, ObjectPathId }: Action, args: readonly unknown[]): unknown {
    if (Name === '_KeepReference') {
      const reference = `reference ${this.references.size + 1} ${Math.random()}`;
      this.references.set(reference, object);
      this.#kept.set(ObjectPathId, reference);
      return null;
    }
    if (Name === '_RemoveReference') {
      this.references.delete(String(args[0]));
      return null;
    }
    const method = object.methods?.[Name] ?? unknownName(Name);
    const value = method(...args);
    return isHostObject(value) ? {} : (value ?? null);
  }

  #identity(path: number, object: HostObject | null): unknown {
    if (object === null) return null;
    const reference = this.#kept.get(path);
    return {
      ...(object.id && { _Id: object.id }),
      ...(reference !== undefined && { _ReferenceId: reference }),
    };
  }

  #at(id: number): HostObject | null {
    const known = this.#known.get(id);
    if (known !== undefined) return known;
    const object = this.#resolved(id);
    this.#known.set(id, object);
    return object;
  }

  #resolved(id: number): HostObject | null {
    const path = this.body.ObjectPaths[id];
    if (path === undefined) throw invalidArgument();
    const { ObjectPathType: type, Name, ParentObjectPathId: parentId } = path;
    if (type === pathType.workbook) return this.workbook;
    if (type === pathType.nothing) return null;
    if (type === pathType.reference) {
      const kept = this.references.get(Name);
      if (!kept) throw new HostError('InvalidObjectPath');
      return kept;
    }
    const parent = parentId === undefined ? null : this.#at(parentId);
    if (parent === null) return null;
    const args = this.#arguments(path.ArgumentInfo);
    if (type === pathType.indexer) return (parent.item ?? unknownName('getItem'))(args[0]);
    if (type === pathType.property) return (parent.parts?.[Name] ?? unknownName(Name))();
    if (Name === 'GetItemAt') return parent.items?.()[Number(args[0])] ?? null;
    const found = (parent.methods?.[Name] ?? unknownName(Name))(...args);
    if (found !== null && !isHostObject(found)) throw new Error(`${Name} gives no object`);
    return found;
  }

  #arguments(info: ArgumentInfo | undefined): unknown[] {
    return (info?.Arguments ?? []).map((argument, index) => {
      const path = info?.ReferencedObjectPathIds?.[index];
      return typeof path === 'number' && path > 0 ? this.#at(path) : argument;
    });
  }
}

function queried(object: HostObject, select: readonly string[]): unknown {
  if (object.items) return { _Items: object.items().map((item) => properties(item, select)) };
  return properties(object, select);
}

function properties(object: HostObject, select: readonly string[]): Record<string, unknown> {
  const values = select
    .map((name) => name.replace(/^items\//, ''))
    .map((name) => name.charAt(0).toUpperCase() + name.slice(1))
    .map((name): [string, unknown] => [name, (object.get?.[name] ?? unknownName(name))()]);
  return { ...(object.id && { _Id: object.id }), ...Object.fromEntries(values) };
}

/** Excel says so of a name it does not know; a test that meets it has found a gap in the fake, or a misspelling. */
function unknownName(name: string): never {
  throw new HostError('ApiNotFound', `the fake Excel has no “${name}”`);
}
