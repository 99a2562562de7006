/** Something the user can mend: `faults` in the data or folder, or wrong `usage` of the program. */
export class UserProblem extends Error {
  override readonly name = 'UserProblem';
  readonly kind: 'faults' | 'usage';

  /** @param message - what is wrong and how to mend it, in the user's words */
  constructor(kind: 'faults' | 'usage', message: string, options?: ErrorOptions) {
    super(message, options);
    this.kind = kind;
  }
}
