import { expect, test } from 'vitest';
import { mayAsk, type Terminal } from '../../src/cli/audit/asking/mayAsk.ts';

const terminal: Terminal = { stdin: { isTTY: true }, stdout: { isTTY: true }, env: { TERM: 'xterm' } };
const nothing = { json: undefined, propose: undefined };

test('a person is asked at a terminal both ways, and nowhere else', () => {
  expect(mayAsk(nothing, terminal)).toBe(true);
  expect(mayAsk({ ...nothing, json: 'report.json' }, terminal)).toBe(true);
  expect(mayAsk(nothing, { ...terminal, env: { ...terminal.env, CI: 'false' } })).toBe(true);

  expect(mayAsk(nothing, { ...terminal, stdin: {} })).toBe(false);
  expect(mayAsk(nothing, { ...terminal, stdout: {} })).toBe(false);
  expect(mayAsk(nothing, { ...terminal, env: { TERM: 'dumb' } })).toBe(false);
  expect(mayAsk(nothing, { ...terminal, env: { ...terminal.env, CI: 'true' } })).toBe(false);
  expect(mayAsk({ ...nothing, json: '-' }, terminal)).toBe(false);
  expect(mayAsk({ ...nothing, propose: 'M.json' }, terminal)).toBe(false);
});
