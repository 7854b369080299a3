import type { Injector } from '@univerjs/core';
import { LexerTreeBuilder } from '@univerjs/engine-formula';

type Names = NonNullable<Parameters<LexerTreeBuilder['treeBuilder']>[2]>;

/** Has the grid's engine read every formula, and the text of every defined name in it, as `plain` gives it. */
export function readPlainly(injector: Injector, plain: (formula: string) => string): void {
  const reader = injector.get(LexerTreeBuilder);
  const read = reader.treeBuilder.bind(reader);
  /** Defined names that stand in a formula together with one whose text is read as another. */
  const changing = new Set<string>();
  const plainNames = (names: Names): Names => {
    const asked: string[] = [];
    return {
      ...names,
      getValueByName: (unitId, name) => {
        const value = names.getValueByName(unitId, name);
        if (!value) return value;
        const formulaOrRefString = plain(value.formulaOrRefString);
        asked.push(name);
        if (formulaOrRefString !== value.formulaOrRefString) for (const known of asked) changing.add(known);
        return { ...value, formulaOrRefString };
      },
      // A formula with a name is kept as it was read, by its own text alone, until the name counts as changed.
      getDirtyDefinedNameMap: () => {
        const dirty = names.getDirtyDefinedNameMap();
        const { unitId } = names;
        if (unitId === null || unitId === undefined) return dirty;
        return {
          ...dirty,
          [unitId]: { ...dirty[unitId], ...Object.fromEntries([...changing].map((name) => [name, '1'])) },
        };
      },
    };
  };
  reader.treeBuilder = (formula, transformSuffix, names) =>
    read(plain(formula), transformSuffix, names && plainNames(names));
}
