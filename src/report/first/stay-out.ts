import type { FamilyFit } from '../../pressure/fit/fit-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { firedWords, MOSTLY_OPEN, ofTen } from '../words/fit-words.ts';
import { familyLabel } from '../words/label.ts';
import { listed } from '../words/number-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import { belowZeroSure } from '../words/sure-words.ts';
import type { Statement } from '../words/why-words.ts';

/** Lines of the part at most. */
const MOST = 4;

/** A family to stay out of, with the rules that say so; says so when nothing is ruled out. */
export function stayOutStatements(plan: WeekPlan): readonly Statement[] {
  const families = plan.fit.families;
  const wrong = families
    .filter(({ situation, family, net }) => situation === ALL_SITUATIONS && family !== 'base' && net.mean < WRONG_FROM)
    .sort((a, b) => a.net.mean - b.net.mean)
    .slice(0, MOST)
    .map((family) => statement(plan, family));
  if (wrong.length > 0) return wrong;
  return [{ words: isMostlyOpen(families) ? TOO_LITTLE : 'Nothing is wrong across the board.', sure: null }];
}

const TOO_LITTLE = 'Too little is charted to say what is wrong against them.';

/** Whether most kinds of pressure cannot be judged on most snaps for want of charting. */
function isMostlyOpen(families: readonly FamilyFit[]): boolean {
  const pressures = families.filter(({ situation, family }) => situation === ALL_SITUATIONS && family !== 'base');
  const open = pressures.filter(({ unknown }) => unknown > MOSTLY_OPEN);
  return pressures.length > 0 && 2 * open.length > pressures.length;
}

/** Right less wrong below which a family is named; judgment: one snap in ten. */
const WRONG_FROM = -0.1;

function statement(plan: WeekPlan, { family, right, wrong, net, rules }: FamilyFit): Statement {
  const why = firedWords(rules, 'wrong', family);
  const words = `${familyLabel(family)}: wrong on ${ofTen(wrong.mean)}, right on ${ofTen(right.mean)} of 10${why === '' ? '' : ` (${why})`}.${carriedWords(plan, family)}`;
  return { words, sure: belowZeroSure(net) };
}

/** A family that is on the menu all the same is said to be: for the mix, not as a first choice. */
function carriedWords({ menu }: WeekPlan, family: string): string {
  const carried = menu?.kind === 'menu' ? menu.calls.filter((call) => call.family === family) : [];
  return carried.length === 0 ? '' : ` On the menu for the mix: ${listed(carried.map(({ call }) => call))}.`;
}
