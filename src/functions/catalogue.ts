import { ACTUAL } from './catalogue/actual.ts';
import { AXIALBAND } from './catalogue/axialBand.ts';
import { AXIALEFFECTIVE } from './catalogue/axialEffective.ts';
import { BAND } from './catalogue/band.ts';
import { COMPENSATE } from './catalogue/compensate.ts';
import { CONVERTUNIT } from './catalogue/convertUnit.ts';
import { DEVIATION } from './catalogue/deviation.ts';
import { DISPLACEMENT } from './catalogue/displacement.ts';
import { EFFECTIVE } from './catalogue/effective.ts';
import { EFFECTIVEONCURVE } from './catalogue/effectiveOnCurve.ts';
import { FIT } from './catalogue/fit.ts';
import { GAPAT } from './catalogue/gapAt.ts';
import { HIGHPASS } from './catalogue/highPass.ts';
import { HYSTERESIS } from './catalogue/hysteresis.ts';
import { INCREMENTAL } from './catalogue/incremental.ts';
import { INDICATED } from './catalogue/indicated.ts';
import { INTERIMSETPOINT } from './catalogue/interimSetpoint.ts';
import { LATEBY } from './catalogue/lateBy.ts';
import { LEVELATTRIP } from './catalogue/levelAtTrip.ts';
import { LINEARRANGE } from './catalogue/linearRange.ts';
import { LIVEVOTE } from './catalogue/liveVote.ts';
import { LOOP } from './catalogue/loop.ts';
import { LOOPEFFECTIVE } from './catalogue/loopEffective.ts';
import { LOWPASS } from './catalogue/lowPass.ts';
import { POINTSTO } from './catalogue/pointsTo.ts';
import { PROBABILITYLATER } from './catalogue/probabilityLater.ts';
import { REACH } from './catalogue/reach.ts';
import { RUNUPTRIP } from './catalogue/runUpTrip.ts';
import { SENSITIVITYAT } from './catalogue/sensitivityAt.ts';
import { SENSITIVITYERROR } from './catalogue/sensitivityError.ts';
import { SENSITIVITYUNCERTAINTY } from './catalogue/sensitivityUncertainty.ts';
import { SHIFT } from './catalogue/shift.ts';
import { SHIFTFRACTION } from './catalogue/shiftFraction.ts';
import { TRIPTIME } from './catalogue/tripTime.ts';
import { VERDICT } from './catalogue/verdict.ts';
import { VOLTSAT } from './catalogue/voltsAt.ts';
import { VOTEBAND } from './catalogue/voteBand.ts';
import { VOTED } from './catalogue/voted.ts';
import { VOTELATER } from './catalogue/voteLater.ts';
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
