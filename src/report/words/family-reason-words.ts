import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import { answerInSentence } from './label.ts';
import { counted, signed } from './number-words.ts';
import { percent } from './percent.ts';

/** Why a family scores as it does over all snaps: the race, the side to send it from, the zones, our own film. */
export function familyReasonWords(plan: WeekPlan, score: FamilyScore): string {
  if (score.family === 'base') return 'Every other family is measured against it.';
  return [
    answerWords(plan, score),
    raceWords(score),
    sideWords(plan, score),
    zoneWords(plan, score),
    filmWords(plan, score),
  ]
    .filter((words) => words !== '')
    .join(' ');
}

/** Points per ten snaps below which a part is not worth a sentence. */
const WORTH_SAYING = 0.05;

function answerWords({ scores }: WeekPlan, { answers }: FamilyScore): string {
  const [most] = [...answers].sort((a, b) => Math.abs(b.points) - Math.abs(a.points));
  if (most === undefined || Math.abs(most.points) < WORTH_SAYING) return '';
  const isGuess = scores.notes.some(({ kind }) => kind === 'kinds_not_charted' || kind === 'answers_not_charted');
  const share = isGuess ? `a guess of ${percent(most.share)} of their snaps` : `${percent(most.share)} of their snaps`;
  return `Most of it comes against ${answerInSentence(most.answer)}: ${signed(most.points)} per 10 snaps (${share}).`;
}

function raceWords({ race, sources }: FamilyScore): string {
  if (race === null) return '';
  const moved =
    signed(sources.race) === '0.0' ? 'no edge over base' : `${signed(sources.race)} per 10 snaps compared with base`;
  return `A rusher gets home before the throw on ${percent(race.home)} of their dropbacks, ${percent(race.typical)} against an average offense: ${moved}.`;
}

/** Fewest slides seen before a side is named. Judgment. */
const ENOUGH_SLIDES = 10;

function sideWords({ protection }: WeekPlan, { family }: FamilyScore): string {
  const { slideToBack } = protection.mix;
  const decided = slideToBack.low > 0.5 || slideToBack.high < 0.5;
  if (family !== 'add_on' || slideToBack.trials < ENOUGH_SLIDES || !decided) return '';
  const to = slideToBack.low > 0.5;
  const count = to ? slideToBack.count : slideToBack.trials - slideToBack.count;
  const side = to ? 'away from the back' : 'on the side of the back';
  return `They slide ${to ? 'to' : 'away from'} the back on ${count} of ${slideToBack.trials} (${percent(count / slideToBack.trials)}): add on ${side}.`;
}

function zoneWords({ scores }: WeekPlan, { family }: FamilyScore): string {
  const meanIn = (zone: string) =>
    scores.zones.find((score) => score.family === family && score.situation === zone)?.points.mean;
  const [open, red] = [meanIn('open_field'), meanIn('red_zone')];
  if (open === undefined || red === undefined) return '';
  return `Outside the red zone ${signed(open)}, inside ${signed(red)} per 10 snaps.`;
}

function filmWords({ scores }: WeekPlan, { family }: FamilyScore): string {
  const own = scores.ownFilm.find((entry) => entry.family === family);
  if (own === undefined) return '';
  const { loss, explosive, takeaway } = own.outcomes;
  return `Our film: ${counted(own.snaps, 'snap', 'snaps')}, ${loss} for a loss, ${explosive} explosive, ${takeaway} taken away; the second half of a season hardly follows the first, so it counts little.`;
}
