/** Input that cannot be used: which field, and what would be right. The command prints it and exits with 2. */
export class BadInput extends Error {
  readonly field: string
  constructor(field: string, message: string) { super(message); this.field = field }
}
