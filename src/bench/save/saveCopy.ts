import { dayOf } from '../../share/dayOf.ts';
import type { ShareFormulas } from '../../share/types.ts';
import type { Bench } from '../bench.ts';
import { copyInWorker } from '../worker/copyInWorker.ts';
import { copyOf } from './copyOf.ts';

const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/**
 * Hands the user a copy of the workbook as a download, with `formulas` one to share; what to know about it, in one line.
 * Rejects with FileRefused as `copyOf`.
 */
export async function saveCopy(bench: Bench, formulas?: ShareFormulas): Promise<string> {
  const share = formulas && { formulas, date: dayOf(new Date()) };
  const { name, bytes, notes } = await copyOf(bench, copyInWorker, share);
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: xlsx }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser takes the bytes soon after the click.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
  return [`A copy of ${name} went to your downloads.`, ...notes].join(' ');
}
