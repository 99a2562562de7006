/** What the shell gets when a command ends. */
export const EXIT = { fine: 0, faults: 1, usage: 2, bug: 70 } as const;
