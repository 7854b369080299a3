import { ACTUAL } from './catalogue/actual.ts';
import { AXIALEFFECTIVE } from './catalogue/axialEffective.ts';
import { BAND } from './catalogue/band.ts';
import { CONVERTUNIT } from './catalogue/convertUnit.ts';
import { DEVIATION } from './catalogue/deviation.ts';
import { DISPLACEMENT } from './catalogue/displacement.ts';
import { EFFECTIVE } from './catalogue/effective.ts';
import { EFFECTIVEONCURVE } from './catalogue/effectiveOnCurve.ts';
import { FIT } from './catalogue/fit.ts';
import { GAPAT } from './catalogue/gapAt.ts';
import { INCREMENTAL } from './catalogue/incremental.ts';
import { INDICATED } from './catalogue/indicated.ts';
import { INTERIMSETPOINT } from './catalogue/interimSetpoint.ts';
import { LATEBY } from './catalogue/lateBy.ts';
import { LEVELATTRIP } from './catalogue/levelAtTrip.ts';
import { LINEARRANGE } from './catalogue/linearRange.ts';
import { LOOP } from './catalogue/loop.ts';
import { POINTSTO } from './catalogue/pointsTo.ts';
import { PROBABILITYLATER } from './catalogue/probabilityLater.ts';
import { REACH } from './catalogue/reach.ts';
import { SENSITIVITYERROR } from './catalogue/sensitivityError.ts';
import { SENSITIVITYUNCERTAINTY } from './catalogue/sensitivityUncertainty.ts';
import { SHIFT } from './catalogue/shift.ts';
import { SHIFTFRACTION } from './catalogue/shiftFraction.ts';
import { VERDICT } from './catalogue/verdict.ts';
import { VOLTSAT } from './catalogue/voltsAt.ts';
import { VOTED } from './catalogue/voted.ts';
import { ZONE } from './catalogue/zone.ts';
import { ZONELIMIT } from './catalogue/zoneLimit.ts';
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
];
