import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { familyLabel } from '../words/label.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import { pointsWords } from '../words/spread-words.ts';
import { sureOf } from '../words/sure-words.ts';
import type { Statement } from '../words/why-words.ts';

/** Lines of the part at most. */
const MOST = 4;

/** What to stay out of against them; says so when nothing is ruled out. */
export function stayOutStatements({ scores }: WeekPlan): readonly Statement[] {
  const behind = scores.families
    .filter(({ situation, verdict }) => situation === ALL_SITUATIONS && verdict === 'behind base')
    .sort((a, b) => a.points.mean - b.points.mean)
    .slice(0, MOST)
    .map(({ family, points, chanceBetterThanBase }) => ({
      words: `${familyLabel(family)}: ${pointsWords(points.mean)} against the base.`,
      sure: sureOf(1 - chanceBetterThanBase),
    }));
  return behind.length > 0 ? behind : [{ words: 'Nothing is ruled out across the board.', sure: null }];
}
