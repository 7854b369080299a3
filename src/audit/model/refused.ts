/** The audit can't begin: one line that says where, what stands there and what to do. */
export class AuditRefused extends Error {
  override readonly name = 'AuditRefused';
}
