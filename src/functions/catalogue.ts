import { ACTUAL, INDICATED, POINTSTO } from './catalogue/panelReadings.ts';
import { AXIALEFFECTIVE, AXIALBAND, VOLTSAT } from './catalogue/axialPosition.ts';
import { COMPENSATE } from './catalogue/runout.ts';
import { DISPLACEMENT, CONVERTUNIT } from './catalogue/units.ts';
import { EFFECTIVE, SHIFT, SHIFTFRACTION, INTERIMSETPOINT } from './catalogue/thresholds.ts';
import { EFFECTIVEONCURVE, HYSTERESIS, REACH } from './catalogue/curves.ts';
import { FIT, GAPAT, DEVIATION, INCREMENTAL, LINEARRANGE } from './catalogue/calibrationRecords.ts';
import { LATEBY, LEVELATTRIP, TRIPTIME } from './catalogue/time.ts';
import { LOOP, LOOPEFFECTIVE } from './catalogue/loop.ts';
import { SENSITIVITYAT, HIGHPASS, LOWPASS, RUNUPTRIP } from './catalogue/frequency.ts';
import {
  SENSITIVITYERROR,
  SENSITIVITYUNCERTAINTY,
  BAND,
  PROBABILITYLATER,
  VERDICT,
} from './catalogue/sensitivity.ts';
import { VOTED, LIVEVOTE, VOTEBAND, VOTELATER } from './catalogue/voting.ts';
import { ZONE, ZONELIMIT } from './catalogue/zones.ts';
import type { WorksheetFunction } from './declare/declare.ts';

/** What a user types before each name, with a dot between. */
export const NAMESPACE = 'TRIPDRIFT';

/** All worksheet functions, in the order in which a reader meets them. */
export const catalogue: readonly WorksheetFunction[] = [
  EFFECTIVE,
  SHIFT,
  SHIFTFRACTION,
  SENSITIVITYERROR,
  INDICATED,
  ACTUAL,
  INTERIMSETPOINT,
  BAND,
  VERDICT,
  PROBABILITYLATER,
  AXIALEFFECTIVE,
  VOTED,
  LATEBY,
  LEVELATTRIP,
  REACH,
  ZONE,
  ZONELIMIT,
  CONVERTUNIT,
  DISPLACEMENT,
  LOOP,
  FIT,
  INCREMENTAL,
  DEVIATION,
  LINEARRANGE,
  GAPAT,
  VOLTSAT,
  EFFECTIVEONCURVE,
  POINTSTO,
  SENSITIVITYUNCERTAINTY,
  LIVEVOTE,
  VOTELATER,
  VOTEBAND,
  AXIALBAND,
  LOOPEFFECTIVE,
  HYSTERESIS,
  HIGHPASS,
  LOWPASS,
  SENSITIVITYAT,
  RUNUPTRIP,
  TRIPTIME,
  COMPENSATE,
];
