/** Goal to go, with or without the mark that joins it to a down. */
const GOAL = /^(?:&|and)?\s*g(?:oal|l)?\.?(?:\s+to\s+go)?$/i;

/** How a distance of goal to go is written in a cell of its own. */
export const GOAL_TO_GO = 'goal';

/** Whether a text says that it is goal to go: `G`, `& G`, `goal`. */
export function isGoalToGo(text: string): boolean {
  return GOAL.test(text.trim());
}
