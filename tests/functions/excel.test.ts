import { beforeAll, describe, expect, it } from 'vitest';
import { type CustomFunctionsLike, associateAll } from '../../src/functions/excel/associate.ts';
import { loadOffice } from '../office/load.ts';

/**
 * The functions called through Microsoft's own runtime (@microsoft/office-js, unmodified), with the part of Excel
 * played by this test: what is sent, and what comes back. The wire format was read from that runtime, it is not documented.
 */
interface Answer {
  readonly ok: boolean;
  readonly value: unknown;
  readonly code?: unknown;
}

interface Bridge {
  onMessageFromHost?: (json: string) => void;
  sendMessageToHost(json: string): void;
}

const ERRORS_ALLOWED = 4;
const answers = new Map<number, Answer>();
const waiting = new Map<number, (answer: Answer) => void>();
let last = 0;

const bridge: Bridge = {
  sendMessageToHost(json) {
    const { id, message } = JSON.parse(json) as { id: number; message: Record<string, unknown> };
    const raw = message['body'] ?? message['Body'];
    const body = (typeof raw === 'string' ? JSON.parse(raw) : raw) as {
      Actions: { Name: string; ArgumentInfo?: { Arguments: unknown[] } }[];
    };
    for (const { Name: name, ArgumentInfo: info } of body.Actions) {
      if (name !== 'SetInvocationArrayResults') continue;
      for (const [invocation, ok, value, code] of info!.Arguments[0] as [
        number,
        boolean,
        unknown,
        unknown,
      ][]) {
        waiting.get(invocation)?.({ ok, value, code });
      }
    }
    const answer = { id, type: 2, message: { statusCode: 200, headers: {}, body: { Results: [] } } };
    queueMicrotask(() => this.onMessageFromHost?.(JSON.stringify(answer)));
  },
};

async function inExcel(name: string, ...parameters: unknown[]): Promise<Answer> {
  const invocation = ++last;
  const answered = new Promise<Answer>((resolve) => waiting.set(invocation, resolve));
  const entry = [1, 1000, '', [invocation, name, parameters, 'S!A1', ERRORS_ALLOWED], null];
  bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries: [entry] } }));
  return answered;
}

beforeAll(() => {
  const office = loadOffice();
  office.OfficeExtension.HostBridge.init(bridge);
  associateAll(office.CustomFunctions as CustomFunctionsLike);
  answers.clear();
});

describe('through the real runtime', () => {
  it('a single cell comes back as one cell (by hand: 1000 mV / 160)', async () => {
    expect(await inExcel('EFFECTIVE', [[5]], [[200]], [[160]], null)).toMatchObject({
      ok: true,
      value: [[6.25]],
    });
    expect(await inExcel('effective', [[5]], [[200]], [[160]])).toMatchObject({ ok: true, value: [[6.25]] });
    expect(await inExcel('BAND', [[5]], [[200]], [[160]], [[0.25]])).toMatchObject({
      ok: true,
      value: [[5, 6.25 / 0.75]],
    });
    expect(await inExcel('ZONE', [[5]], [[3600]], [['mil']])).toMatchObject({ ok: true, value: [['B']] });
  });

  it('a column comes back as a column, errors in their cells with their text', async () => {
    const column = await inExcel(
      'EFFECTIVE',
      [[5], [0], [null], [10]],
      [[200]],
      [[160], [160], [null], [160]],
    );
    expect(column).toMatchObject({ ok: true });
    const [first, second, third, fourth] = column.value as unknown[][];
    expect([first, third, fourth]).toEqual([[6.25], [''], [12.5]]);
    expect(second![0]).toMatchObject({
      code: '#VALUE!',
      message: 'Setpoint is zero or blank: enter a number above 0.',
    });
  });

  it('a record spills a row, or a column beside it (by hand: 2 V over 10 mil)', async () => {
    const record = [
      [[10], [20], [30]],
      [[-2], [-4], [-6]],
    ];
    expect(await inExcel('INCREMENTAL', ...record)).toMatchObject({ ok: true, value: [[200], [200]] });
    const { value } = await inExcel('FIT', ...record, null, null);
    expect((value as number[][]).map((row) => row.length)).toEqual([7]);
    expect((value as number[][])[0]![0]).toBeCloseTo(200, 10);
    expect(await inExcel('EFFECTIVEONCURVE', [[50]], [[200]], ...record, [[-4]], null)).toMatchObject({
      ok: false,
      code: 1,
      value: 'Setpoint cannot be shown to act: the record supports indications up to 20.',
    });
  });

  it('an error for the whole call keeps its kind and its text', async () => {
    // Codes of the runtime's own table: 7 #VALUE!, 1 #N/A, 6 #NUM!, 5 #DIV/0!.
    expect(await inExcel('EFFECTIVE', [[0]], [[200]], [[160]])).toMatchObject({
      ok: false,
      code: 7,
      value: 'Setpoint is zero or blank: enter a number above 0.',
    });
    expect(await inExcel('VOTED', [['bypassed'], [4]], [[2]])).toMatchObject({
      ok: false,
      code: 1,
      value: 'Thresholds: 1 of 2 members can act, 2 needed: the group cannot trip.',
    });
    expect(await inExcel('EFFECTIVE', [[1e308]], [[1e308]], [[1]])).toMatchObject({ ok: false, code: 6 });
  });

  it('an error in an argument arrives and passes on', async () => {
    const error = (code: string) => [[{ type: 'CustomFunctionError', code }]];
    expect(await inExcel('EFFECTIVE', error('#N/A'), [[200]], [[160]])).toMatchObject({ ok: false, code: 1 });
    expect(await inExcel('EFFECTIVE', error('#DIV/0!'), [[200]], [[160]])).toMatchObject({
      ok: false,
      code: 5,
    });
    expect(await inExcel('EFFECTIVE', error('#REF!'), [[200]], [[160]])).toMatchObject({
      ok: false,
      code: 7,
      value: 'An argument holds #REF!: correct that cell.',
    });
    expect(await inExcel('VOTED', [[error('#N/A')[0]![0], 4, 5]], [[2]])).toMatchObject({
      ok: true,
      value: [[5]],
    });
  });

  it('an unexpected failure keeps its text too', () => {
    const office = loadOffice();
    const failing = { ...(office.CustomFunctions as object) } as unknown as CustomFunctionsLike;
    let run: ((...given: unknown[]) => unknown) | undefined;
    Object.assign(failing, {
      Error: (office.CustomFunctions as CustomFunctionsLike).Error,
      ErrorCode: (office.CustomFunctions as CustomFunctionsLike).ErrorCode,
      associate: (id: string, associated: typeof run) => {
        if (id === 'EFFECTIVE') run = associated;
      },
    });
    associateAll(failing);
    const trap = new Proxy([[1], [2]], {
      get(target, key) {
        if (key === '1') throw new Error('a cell that cannot be read');
        return Reflect.get(target, key) as unknown;
      },
    });
    expect(() => run!(trap, 200, 160)).toThrow('Tripdrift failed unexpectedly: a cell that cannot be read');
  });
});
