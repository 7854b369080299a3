import process from 'node:process';

/** How a person types a command: by npm in a checkout, by its own name where the package is installed. */
export function typedAs(command: 'audit' | 'calc'): string {
  return process.env['npm_lifecycle_event'] === command ? `npm run -s ${command} --` : `tripdrift ${command}`;
}
