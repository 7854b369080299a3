// Loaded before a command (node --import): counts the calls of the file system that the command itself makes, and has the
// one asked for fail, or the process killed there. FAULT={"at": 3, "kind": "ENOSPC"}; kind "kill" kills, "count" only counts.
// `within` and `without` name what the command line of a process must hold, or must not, for the fault to be in it.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import process from 'node:process';

const { at = 0, kind = 'count', log, within = '', without } = JSON.parse(process.env.FAULT ?? '{}');
const line = process.argv.join(' ');
const here = line.includes(within) && !(without && line.includes(without));
const { appendFileSync, writeSync, writeFileSync } = fs;
const errno = { ENOSPC: -28, EIO: -5, EACCES: -13, EMFILE: -24 };

let calls = 0;
let depth = 0;

/** Only what the built command calls counts: Node reads files of its own as it loads modules. */
function isOurs() {
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 30;
  const { stack } = new Error();
  Error.stackTraceLimit = stackTraceLimit;
  return stack.includes('tripdrift.mjs');
}

function fail(name, path) {
  const error = new Error(`${kind}: injected, ${name} '${String(path)}'`);
  throw Object.assign(error, { code: kind, errno: errno[kind], syscall: name, path: String(path) });
}

/** Half of what was to be written, as a disk does that runs full or loses its power. */
function half(name, args) {
  depth++;
  if (name === 'writeSync') writeSync(args[0], args[1].subarray(0, args[1].length >> 1));
  if (name === 'writeFileSync' && typeof args[0] === 'number')
    writeFileSync(args[0], args[1].slice(0, args[1].length >> 1));
  depth--;
}

function note(word) {
  if (!log) return;
  depth++;
  appendFileSync(log, `${word}\n`);
  depth--;
}

function wrapped(name, original) {
  return function (...args) {
    if (depth > 0 || !isOurs()) return original.apply(this, args);
    calls++;
    note(name);
    if (calls === at && kind !== 'count') {
      half(name, args);
      note('fault');
      if (kind === 'kill') process.kill(process.pid, 'SIGKILL');
      else if (name === 'existsSync') return false;
      else fail(name, args[0]);
    }
    depth++;
    try {
      return original.apply(this, args);
    } finally {
      depth--;
    }
  };
}

if (here) {
  for (const [name, value] of Object.entries(fs)) {
    if (name.endsWith('Sync') && typeof value === 'function') {
      fs[name] = Object.assign(wrapped(name, value), value);
    }
  }
  for (const [name, value] of Object.entries(fs.promises)) {
    if (typeof value === 'function') {
      const call = wrapped(name, value);
      fs.promises[name] = (...args) => {
        try {
          return call(...args);
        } catch (error) {
          return Promise.reject(error);
        }
      };
    }
  }
  syncBuiltinESMExports();
}
