import process from 'node:process';
import type { Command } from '../command.ts';
import { memberMark, serveFleet } from '../fleet/member.ts';
import { auditCommand } from './audit.ts';
import { failed } from './reason.ts';

/** `audit`; also what runs in the processes that audit the workbooks of a folder. */
export const auditProgram: Command = {
  run(args) {
    if (process.send === undefined || args[0] !== memberMark) return auditCommand(args);
    serveFleet();
    return 0;
  },
  failed,
};
