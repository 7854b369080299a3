import { type Fuzzer, shuffled } from '../fuzz/fuzzer.ts';
import { everyFault, faultText } from './every.ts';
import { withFault } from './faults.ts';

/** Every fault of the file system in every command, in random order, and then all over again. */
export const commandFaults: Fuzzer = {
  name: 'commands whose file system fails',
  async start(seed) {
    const faults = shuffled(await everyFault(), seed);
    let next = 0;
    return async () => {
      const fault = faults[next++ % faults.length];
      if (!fault) return undefined;
      const { complaints } = await withFault(fault);
      return complaints.length === 0 ? undefined : `${faultText(fault)}: ${complaints.join('; ')}`;
    };
  },
};
