/** The command can't be carried out as given: one line for a person; the program ends with exit code 2. */
export class UsageRefused extends Error {
  override readonly name = 'UsageRefused';
}
