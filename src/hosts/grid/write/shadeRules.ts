import type { ShadeRule, SheetModel } from '../../../sheets/model.ts';
import type { ViewRule } from '../../file/view/types.ts';

/** The shades of a result sheet as rules that the grid keeps beside the sheet, so that they follow what cells say. */
export function shadeRules({ shades = [] }: SheetModel): ViewRule[] {
  return shades.map(({ area, equals, style }): ViewRule => ({
    kind: 'cellIs',
    areas: [area],
    operator: 'equal',
    formulas: [`"${equals.replaceAll('"', '""')}"`],
    shade: {
      ...(style.fill !== undefined && { fill: style.fill }),
      ...(style.color !== undefined && { color: style.color }),
      ...(style.bold === true && { bold: true }),
    },
    stops: true,
  }));
}

/** Those of a sheet's rules that are shades of a result sheet. */
export function ruleShades(rules: readonly ViewRule[]): ShadeRule[] {
  return rules.flatMap(({ kind, areas, operator, formulas, shade }): ShadeRule[] => {
    const text = /^"((?:[^"]|"")*)"$/.exec(formulas[0] ?? '')?.[1];
    if (kind !== 'cellIs' || operator !== 'equal' || text === undefined) return [];
    const { fill, color, bold } = shade;
    const style = {
      ...(fill !== undefined && { fill }),
      ...(color !== undefined && { color }),
      ...(bold === true && { bold: true }),
    };
    return areas.map((area) => ({ area, equals: text.replaceAll('""', '"'), style }));
  });
}
