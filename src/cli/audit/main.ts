import { AuditRefused } from '../../audit/refused.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { auditCommand } from './audit.ts';
import { UsageRefused } from '../refused.ts';
import { plain } from '../terminal.ts';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 2);
});

try {
  process.exitCode = auditCommand(process.argv.slice(2));
} catch (error) {
  const expected =
    error instanceof AuditRefused || error instanceof FileRefused || error instanceof UsageRefused;
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${plain(expected ? message : `The audit failed unexpectedly: ${message}`, 2000)}\n`);
  process.exitCode = 2;
}
