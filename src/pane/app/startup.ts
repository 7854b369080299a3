/** The part of Office.js that the start of the pane needs. */
export interface OfficeLike {
  onReady(): Promise<{ readonly host: unknown }>;
}

/** Where the pane runs: inside Excel, inside another Office program, or in a plain browser. */
export type Surroundings = 'excel' | 'another program' | 'browser';

const patience = 10_000;

/**
 * Waits for Office where its library is there. `onSilence` is called once where Excel does not answer in time; the
 * waiting goes on.
 */
export async function surroundings(
  office: OfficeLike | undefined,
  onSilence: () => void,
): Promise<Surroundings> {
  if (!office) return 'browser';
  const timer = setTimeout(onSilence, patience);
  try {
    const { host } = await office.onReady();
    if (host === 'Excel') return 'excel';
    return host === null || host === undefined ? 'browser' : 'another program';
  } finally {
    clearTimeout(timer);
  }
}
