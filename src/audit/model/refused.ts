/** The audit can't begin: one line that says where, what stands there and what to do. */
export class AuditRefused extends Error {
  override readonly name = 'AuditRefused';
}

/** The two tables can't be told by their standard headers. */
export class TablesUnclear extends AuditRefused {}
