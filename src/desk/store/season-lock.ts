/** A season's lock: one tab types, the others read. */
export interface SeasonLock {
  /** Gives it back. */
  readonly release: () => void;
}

/** What a tab wants of a lock. */
export interface LockWish {
  readonly id: string;
  /** Takes it from the tab that has it. */
  readonly steal: boolean;
  /** Another tab took it. */
  readonly onLost: () => void;
}

/** The lock, or null when another tab has it. */
export function takeLock({ id, steal, onLost }: LockWish): Promise<SeasonLock | null> {
  return new Promise((resolve) => {
    let release: () => void = () => undefined;
    const held = new Promise<void>((end) => {
      release = end;
    });
    const options: LockOptions = steal ? { steal: true } : { ifAvailable: true };
    navigator.locks
      .request(`pressure-plan ${id}`, options, async (lock) => {
        if (lock === null) return resolve(null);
        resolve({ release });
        await held;
      })
      .catch(() => onLost());
  });
}
