/** The command can't be carried out as given: one line for a person; the program ends with exit code 2. */
export class UsageRefused extends Error {
  override readonly name = 'UsageRefused';
}

/** Whether an error is the operating system's answer to a call. */
export function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'syscall' in error;
}

/** Whether the system said that there is no such file or folder. */
export function isAbsent(error: unknown): boolean {
  return isSystemError(error) && (error.code === 'ENOENT' || error.code === 'ENOTDIR');
}

/** What the system said, in plain words; `otherwise` is what can't be done. */
export function inWords(error: unknown, otherwise: string): string {
  switch (error instanceof Error && 'code' in error ? error.code : undefined) {
    case 'ENOENT':
      return 'there is no such file';
    case 'EISDIR':
      return 'is a folder, not a file';
    case 'EACCES':
    case 'EPERM':
      return `${otherwise}: permission is missing`;
    case 'ENAMETOOLONG':
      return `${otherwise}: its name is too long`;
    case 'ENOTDIR':
      return `${otherwise}: part of its path is a file, not a folder`;
    case 'EROFS':
      return `${otherwise}: the disk can only be read`;
    case 'ENOSPC':
    case 'EDQUOT':
      return `${otherwise}: the disk is full`;
    case 'EIO':
      return `${otherwise}: the disk reports a fault`;
    case 'EMFILE':
    case 'ENFILE':
      return `${otherwise}: too many files are open on this machine`;
    case 'EBUSY':
      return `${otherwise}: another program holds it open`;
    default:
      return otherwise;
  }
}
