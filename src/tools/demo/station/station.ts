import { boosterPump } from './boosterPump.ts';
import { coolerFan } from './coolerFan.ts';
import { gasCompressor } from './gasCompressor.ts';
import { gearbox } from './gearbox.ts';
import { powerTurbine } from './powerTurbine.ts';
import { recycleCompressor } from './recycleCompressor.ts';
import type { Machine } from './records.ts';
import { secondCompressor, secondTurbine } from './secondTrain.ts';
import { sealOilPump } from './sealOilPump.ts';
import { standbyPump } from './standbyPump.ts';

/** The machines of an invented gas compression station, in the order in which its workbook lists them. */
export const machines: readonly Machine[] = [
  powerTurbine,
  gearbox,
  gasCompressor,
  recycleCompressor,
  boosterPump,
  standbyPump,
  sealOilPump,
  coolerFan,
  secondTurbine,
  secondCompressor,
];
