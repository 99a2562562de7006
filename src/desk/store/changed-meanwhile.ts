import { UserProblem } from '../../season/user-problem.ts';

/** Files that somebody else changed since they were read; nothing was written. */
export class ChangedMeanwhile extends UserProblem {
  readonly paths: readonly string[];

  /** @param paths - of the files that changed */
  constructor(paths: readonly string[]) {
    super('faults', `Not saved: ${paths.join(', ')} changed meanwhile, outside of this page.`);
    this.paths = paths;
  }
}
