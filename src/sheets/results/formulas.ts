import { policyCells } from './policyCells.ts';

/**
 * The formulas of the results sheet, without the leading `=`. `[id]` is the cell of that column in the same row,
 * `[$part]` a cell of the policy. An empty cell counts as 0 in arithmetic, so that one formula serves vibration, which has
 * no zero voltages, and position alike. The decision compares real levels: for vibration, Km/Kc within [1 − t, 1 + t] is
 * the same as T within [m·S/(1 + t), m·S/(1 − t)]. 1E-12 is the slack for floating-point noise of the audit's own decision.
 */
export const formulas = {
  zeroShift:
    'IF(COUNT([zeroConfigured],[zeroMeasured],[sign],[unitsPerVolt])=4,[sign]*([zeroConfigured]-[zeroMeasured])*[unitsPerVolt]/[measured],0)',
  voltsAtSetpoint:
    'IF(COUNT([zeroConfigured],[sign])=2,[zeroConfigured]+[sign]*[multiplier]*[setpoint]*[configured]/[unitsPerVolt],"")',
  effective: '[multiplier]*[setpoint]*[configured]/[measured]+[zeroShift]',
  low: 'IF([uncertainty]="","",MIN([effective]/(1+[uncertainty]),[effective]/(1-[uncertainty])))',
  high: 'IF([uncertainty]="","",MAX([effective]/(1+[uncertainty]),[effective]/(1-[uncertainty])))',
  shift: 'SIGN([setpoint])*([effective]-[multiplier]*[setpoint])',
  shiftFraction: '[shift]/ABS([multiplier]*[setpoint])',
  acceptedFrom: 'ABS([multiplier]*[setpoint])/(1+[$tolerance])',
  acceptedTo: 'ABS([multiplier]*[setpoint])/(1-[$tolerance])',
  judgedFrom: 'ABS([effective])/(1+IF([$rule]="guarded",N([uncertainty]),0))',
  judgedTo: 'ABS([effective])/(1-IF([$rule]="guarded",N([uncertainty]),0))',
  unreachable:
    'MID(IF(AND([fullScale]<>"",ABS([multiplier]*[setpoint])>[fullScale]),", above full scale","")' +
    '&IF([effective]*[setpoint]<=0,", on the other side of zero","")' +
    '&IF(OR(AND([linearReach]<>"",[effective]>[linearReach]),AND([voltsAtSetpoint]<>"",OR([voltsAtSetpoint]>[$near],[voltsAtSetpoint]<[$far]))),", out of the linear reach",""),3,99)',
  verdict:
    'IF([unreachable]<>"","unreachable",IF(AND([judgedFrom]>=[acceptedFrom]*(1-1E-12),[judgedTo]<=[acceptedTo]*(1+1E-12)),"within",' +
    'IF([judgedTo]<[acceptedFrom]*(1-1E-12),"early",IF([judgedFrom]>[acceptedTo]*(1+1E-12),"late","undetermined"))))',
  probability:
    'IF(OR([limit]="",N([uncertainty])<=0),"",NORMSDIST((ABS([effective])/[limit]-1)*[coverage]/[uncertainty]))',
  realReading: 'IF([reading]="","",[reading]*[configured]/[measured]+[zeroShift])',
  headroom: 'IF([reading]="","",SIGN([setpoint])*([effective]-[realReading]))',
  indicated: '([setpoint]-[zeroShift])*[measured]/[configured]',
} as const;

export type FormulaId = keyof typeof formulas;

/**
 * A formula with cell references in place of names; `letters` gives the letters of a column.
 * @throws Error for a name that is no column and no part of the policy.
 */
export function spelledOut(formula: string, letters: ReadonlyMap<string, string>): string {
  return formula.replace(/\[(\$?)(\w+)\]/g, (_, dollar: string, name: string) => {
    const reference =
      dollar === '$' ? (policyCells as Readonly<Record<string, string>>)[name] : letters.get(name);
    if (reference === undefined) throw new Error(`formula names ${dollar}${name}, which is no cell here`);
    return dollar === '$' ? reference : `${reference}{r}`;
  });
}
