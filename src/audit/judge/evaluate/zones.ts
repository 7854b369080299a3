import { zone } from '../../../method/zone.ts';
import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import { parseUnit } from '../../../units/parse.ts';
import type { Channel } from '../../model/channel.ts';

const micrometre = parseUnit('µm');

/** The zones of shaft vibration in which a threshold was meant to act and really acts; `null` where no speed is given. */
export function zonesOf(
  channel: Channel,
  intended: number,
  effective: number,
): { zone: string | null; intendedZone: string | null } {
  const { kind, speed, unit, detection } = channel;
  if (kind !== 'radial' || speed === null || detection === null || !micrometre)
    return { zone: null, intendedZone: null };
  const micrometres = convertDetection(convert(1, unit, micrometre), detection, 'p-p');
  return {
    zone: zone(effective * micrometres, speed) ?? null,
    intendedZone: zone(intended * micrometres, speed) ?? null,
  };
}
