import { memberMark, serveFleet } from '../fleet/member.ts';
import { auditCommand } from './audit.ts';
import { reasonOf } from './reason.ts';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 2);
});

if (process.send !== undefined && process.argv[2] === memberMark) serveFleet();
else {
  try {
    process.exitCode = await auditCommand(process.argv.slice(2));
  } catch (error) {
    process.stderr.write(`${reasonOf(error)}\n`);
    process.exitCode = 2;
  }
}
