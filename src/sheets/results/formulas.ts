const volts = 'COUNT([zeroConfigured])=1';
const swing = '[multiplier]*[setpoint]*[configured]/IF([gain]="",1,[gain])/[unitsPerVolt]';
const gain = 'IF([gain]="",1,[gain])';
const width = '([loopAtSpan]-[loopAtZero])';
/** What the sensor before a loop adds; 1 where the loop's ends stand in place of the sensitivity. */
const sensor = 'IF([loopOwn]="yes",1,[configured]/[measured])';
const isLoop = '[loopAtSpan]<>""';
/** Whether an uncertainty of the ends of a loop is known. */
const ofEnds = 'COUNT([loopAtZeroUncertainty],[loopAtSpanUncertainty])>0';
/** Whether the interval counts in the decision. */
const guarded = 'IF([$rule]="guarded",[ofDivisor]<>"",FALSE)';
/** Whether a voltage lies outside a span, of which either end may be missing; 1E-9 is the slack of the audit's own decision. */
const outside = (volt: string, near: string, far: string): string =>
  `IF(${volt}="",FALSE,OR(IF(${near}="",FALSE,${volt}>${near}+1E-9),IF(${far}="",FALSE,${volt}<${far}-1E-9)))`;
const bothOutside = (near: string, far: string): string =>
  `OR(${outside('[voltsAtSetpoint]', near, far)},${outside('[voltsOtherWay]', near, far)})`;
/** Whether the zero of a position is not known, so that nothing but lateness by the sensitivities alone can be told. */
const noZero =
  'AND([unitsPerVolt]<>"",OR(COUNT([zeroConfigured],[zeroMeasured])<2,AND([sign]="",[zeroConfigured]<>[zeroMeasured])))';
/** Whether the line is a position that is worked out from its zeros. */
const isPosition = `AND([unitsPerVolt]<>"",NOT(${noZero}))`;
const isLate = '[judgedFrom]>[acceptedTo]*(1+1E-12)';
/** Half the width of Fieller's interval, times 1 − U². */
const root =
  'SQRT(([ofShift]^2+([ofGain]*[multiplier]*[setpoint]*[factor])^2)*(1-[ofDivisor]^2)+([ofDivisor]*[listed])^2-2*[both]*[listed]+[both]^2)';
/** What the monitor shows at the real setpoint, the uncertainty counted where the rule is guarded. */
const counted =
  'SQRT(MAX(0,([ofGain]*([setpoint]-[zeroShift]))^2+(1-[ofGain]^2)*([ofShift]^2-2*[setpoint]*[both]+([setpoint]*[ofDivisor])^2)))';
const shown = `(IF(${guarded},([setpoint]-[zeroShift]-SIGN([setpoint])*${counted})/(1-[ofGain]^2),[setpoint]-[zeroShift])/[factor])`;
const spreadAtLimit =
  'SQRT(MAX(0,[ofShift]^2+([ofGain]*[multiplier]*[setpoint]*[factor])^2-2*[limit]*[both]+([limit]*[ofDivisor])^2))';
const panelSteps = '([panelLeast]/[panelStep])';

/**
 * The formulas of the results sheet, without the leading `=`. `[id]` is the cell of that column in the same row,
 * `[$part]` a cell of the policy. An empty cell counts as 0 in arithmetic, so that one formula serves vibration, which has
 * no zero voltages, and position alike. The decision compares real levels: for vibration, Km/Kc within [1 − t, 1 + t] is
 * the same as T within [m·S/(1 + t), m·S/(1 − t)]. 1E-12 is the slack for floating-point noise of the audit's own decision.
 */
export const formulas = {
  factor: `IF(${isLoop},16/${width}/${gain}*${sensor},[configured]/${gain}/[measured])`,
  zeroShift:
    `IF(${isLoop},[loopSpan]*(4-[loopAtZero])/${width}*${sensor},` +
    'IF(COUNT([zeroConfigured],[zeroMeasured],[sign],[unitsPerVolt])=4,[sign]*([zeroConfigured]-[zeroMeasured])*[unitsPerVolt]/[measured],0))',
  ofDivisor:
    'IF(COUNT([uncertainty],[gainUncertainty],[zeroUncertainty],[loopAtZeroUncertainty],[loopAtSpanUncertainty])=0,"",' +
    `IF(${isLoop},SQRT(([loopAtZeroUncertainty]^2+[loopAtSpanUncertainty]^2)/${width}^2+IF(AND([loopOwn]="yes",${ofEnds}),0,[uncertainty]^2)),` +
    `IF(${isPosition},SUM([uncertainty]),SQRT([uncertainty]^2+[gainUncertainty]^2))))`,
  ofShift:
    `IF([ofDivisor]="","",IF(${isLoop},ABS([loopSpan]*[loopAtZeroUncertainty]/${width})*${sensor},` +
    `IF(${isPosition},[unitsPerVolt]*[zeroUncertainty]/[measured],0)))`,
  ofGain: `IF([ofDivisor]="","",IF(OR(${isLoop},${isPosition}),SUM([gainUncertainty]),0))`,
  both: `IF([ofDivisor]="","",IF(${isLoop},[loopSpan]*[loopAtZeroUncertainty]^2/${width}^2*${sensor},0))`,
  voltsAtSetpoint: `IF(${volts},[zeroConfigured]+IF([sign]="",1,[sign])*${swing},"")`,
  voltsOtherWay: `IF(AND(${volts},[sign]=""),[zeroConfigured]-${swing},"")`,
  listed: '[multiplier]*[setpoint]*[factor]+[zeroShift]',
  listedLow: `IF([ofDivisor]="","",([listed]-[both]-${root})/(1-[ofDivisor]^2))`,
  listedHigh: `IF([ofDivisor]="","",([listed]-[both]+${root})/(1-[ofDivisor]^2))`,
  acceptedFrom: 'ABS([multiplier]*[setpoint])/(1+[$tolerance])',
  acceptedTo: 'ABS([multiplier]*[setpoint])/(1-[$tolerance])',
  judgedFrom: `IF(${guarded},MIN(SIGN([setpoint])*[listedLow],SIGN([setpoint])*[listedHigh]),ABS([listed]))`,
  judgedTo: `IF(${guarded},MAX(SIGN([setpoint])*[listedLow],SIGN([setpoint])*[listedHigh]),ABS([listed]))`,
  unreachable:
    'MID(IF([fullScale]="","",IF(ABS([multiplier]*[setpoint])>[fullScale]*(1+1E-12),", above full scale",""))' +
    '&IF([listed]*[setpoint]<=0,", on the other side of zero","")' +
    `&IF(OR(IF([linearReach]="",FALSE,[listed]>[linearReach]*(1+1E-12)),${bothOutside('[$near]', '[$far]')}),", out of the linear reach","")` +
    `&IF(${bothOutside('[faultNear]', '[faultFar]')},", outside the fault limits",""),3,99)`,
  listedVerdict:
    `IF([unreachable]<>"","cannot act",IF(${noZero},IF(${isLate},"late","not known"),IF(AND([judgedFrom]>=[acceptedFrom]*(1-1E-12),[judgedTo]<=[acceptedTo]*(1+1E-12)),"OK",` +
    `IF([judgedTo]<[acceptedFrom]*(1-1E-12),"early",IF(${isLate},"late","uncertain")))))`,
  effective: `IF(AND(${noZero},NOT(${isLate})),"",[listed])`,
  low: 'IF([effective]="","",[listedLow])',
  high: 'IF([effective]="","",[listedHigh])',
  verdict: '[listedVerdict]',
  shift: 'IF([effective]="","",SIGN([setpoint])*([effective]-[multiplier]*[setpoint]))',
  shiftFraction: 'IF([shift]="","",[shift]/ABS([multiplier]*[setpoint]))',
  listedPanel: `IF(SIGN([setpoint])*${shown}<=0,"",${shown})`,
  panelLeast: 'IF([listedPanel]="","",MIN(ABS([listedPanel]),[fullScale]))',
  panelStep: 'IF([panelLeast]="","",IF([resolution]="",10^(INT(LOG10([panelLeast]))-1),[resolution]))',
  panel:
    `IF([panelLeast]="","",IF(${panelSteps}<1-1E-12,"",SIGN([setpoint])*[panelStep]*` +
    `IF(ABS(${panelSteps}-ROUND(${panelSteps},0))<=1E-12*MAX(1,${panelSteps}),ROUND(${panelSteps},0),INT(${panelSteps}))))`,
  interim:
    'IF(OR([verdict]<>"late",[multiplier]<>1,[panel]=""),"",IF(ABS([panel])>ABS([setpoint]),"",[panel]))',
  beyondLimit:
    'IF(OR([limit]="",[multiplier]<>1,[effective]=""),"",IF(ABS([effective])>[limit],"yes",' +
    'IF([$rule]<>"guarded","no",IF([ofDivisor]="","no",IF(ABS(IF([setpoint]<0,[low],[high]))>[limit],"may","no")))))',
  probability: `IF(OR([limit]="",[ofDivisor]="",[effective]=""),"",IF(${spreadAtLimit}=0,IF(ABS([effective])>[limit],1,0),NORMSDIST((ABS([effective])-[limit])*[$coverage]/${spreadAtLimit})))`,
  realReading: 'IF([reading]="","",[reading]*[factor]+[zeroShift])',
  headroom:
    'IF(OR([reading]="",[realReading]="",[effective]=""),"",SIGN([setpoint])*([effective]-[realReading]))',
  runoutReal: `[runout]*[configured]/${gain}/[runoutSensitivity]`,
  movesFrom: '[effective]-[runoutReal]',
  movesTo: '[effective]+[runoutReal]',
  indicated: '([setpoint]-[zeroShift])/[factor]',
} as const;

export type FormulaId = keyof typeof formulas;
