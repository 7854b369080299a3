import { calcCommand } from './calc.ts';
import { UsageRefused } from './refused.ts';
import { plain } from './terminal.ts';

try {
  const { out, error, exitCode } = calcCommand(process.argv.slice(2));
  process.stdout.write(out);
  process.stderr.write(error);
  process.exitCode = exitCode;
} catch (error) {
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `${plain(error instanceof UsageRefused ? message : `calc failed unexpectedly: ${message}`)}\n`,
  );
  process.exitCode = 2;
}
