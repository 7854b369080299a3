import { checkAddresses } from './check/addresses.ts';
import { type Fault, readElements } from './check/element.ts';
import { checkIcons } from './check/icons.ts';
import { checkOrder } from './check/order.ts';
import { checkResources } from './check/resources.ts';
import { checkRuntime, checkRequirements } from './check/runtime.ts';
import { checkTexts } from './check/texts.ts';

export type { Fault } from './check/element.ts';

/**
 * Everything known to be wrong with a manifest, without asking anybody outside, in the order of its lines; empty
 * where it is good. `file` reads a built file by its address, or says that there is none.
 * Sources stand beside each check.
 */
export function checkManifest(xml: string, file: (address: string) => Uint8Array | undefined): Fault[] {
  const root = readElements(xml);
  if (!('children' in root)) return [root];
  return [
    ...checkOrder(root),
    ...checkTexts(root),
    ...checkRequirements(root),
    ...checkResources(root),
    ...checkRuntime(root),
    ...checkIcons(root, file),
    ...checkAddresses(root, file),
  ].sort((one, other) => one.line - other.line);
}
