/** What the shell is told when a command ends. */
export const EXIT = { fine: 0, faults: 1, usage: 2, bug: 70 } as const;

/** Something the user can mend: `faults` in the data or folder, or wrong `usage` of a command. */
export class CommandProblem extends Error {
  override readonly name = 'CommandProblem';
  readonly kind: 'faults' | 'usage';

  /** @param message - what is wrong and how to mend it, in the user's words */
  constructor(kind: 'faults' | 'usage', message: string, options?: ErrorOptions) {
    super(message, options);
    this.kind = kind;
  }
}
