import type { Call } from '../../game/call-library.ts';
import type { Forecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Share } from '../../stats/share.ts';
import { rushWords } from '../view/call-words.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { tellFollows } from '../view/tells-chart.ts';
import { answerInSentence, capital, familyAndCoverage, plainWords } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { seenWords } from '../words/seen-words.ts';
import { isThin, shareWords, thinWords } from '../words/share-words.ts';
import { planSituations } from '../words/situation-label.ts';
import { majoritySure } from '../words/sure-words.ts';
import { BACK_JOBS } from '../words/why-words.ts';
import { numberedCalls } from './call-numbers.ts';

/** What they do by down and distance, counted on film; situations without film or hardly ever seen are left out. */
export function expectLines(plan: WeekPlan): readonly { readonly where: string; readonly what: string }[] {
  const cells = knownForecasts(plan, 'answer');
  return planSituations(plan)
    .filter(({ expectedSnaps }) => expectedSnaps >= OFTEN_ENOUGH)
    .flatMap(({ id, label }) => {
      const cell = cells.find((entry) => entry.situation === id);
      return cell === undefined || cell.ownSnaps === 0 ? [] : [{ where: label, what: countedWords(cell) }];
    });
}

/** Snaps a game from which on a situation is worth a player's memory; judgment. */
const OFTEN_ENOUGH = 2;

function countedWords({ classes }: Forecast): string {
  const [first, second] = [...classes].sort((a, b) => b.film.count - a.film.count);
  if (first === undefined) return '';
  const then = second === undefined ? '' : `, ${answerInSentence(second.name)} ${second.film.count}`;
  return `${answerInSentence(first.name)} ${shareWords(first.film)}${then}`;
}

/** Tendencies beyond the raw keys. */
export function watchLines(plan: WeekPlan): readonly string[] {
  return plan.forecast.tells.tells
    .slice(0, 4)
    .map(
      (tell) =>
        `${seenWords(tell.seen)}: ${tellFollows(tell).toLowerCase()} ${shareWords(tell.film)}, plan on ${percent(tell.planWith)}.`,
    );
}

/** How they protect in one line each for the men in front. */
export function protectLines(plan: WeekPlan): readonly string[] {
  const { mix } = plan.protection;
  const lines = [
    commonest(mix.protectors.map(({ count, share }) => ({ name: `${count} protect`, share }))),
    slideLine(mix.slideToBack),
    commonest(mix.backJobs.map(({ job, share }) => ({ name: BACK_JOBS[job] ?? plainWords(job), share }))),
  ].filter((line) => line !== '');
  return lines.length === 0 ? ['Not charted. Read the back.'] : lines;
}

/** The commonest kind with its count, and the next one where the first is under half. */
function commonest(kinds: readonly { readonly name: string; readonly share: Share }[]): string {
  const [first, second] = [...kinds].sort((a, b) => b.share.count - a.share.count);
  if (first === undefined || first.share.count === 0) return '';
  const also =
    (first.share.estimate ?? 0) > 0.5 || second === undefined || second.share.count === 0
      ? ''
      : `; ${second.name} ${shareWords(second.share)}`;
  return `${capital(first.name)} ${shareWords(first.share)}${also}${thinWords(first.share)}.`;
}

/** Which way the line turns; a side to live on only where the count carries it. */
function slideLine(toBack: Share): string {
  if (toBack.estimate === null) return '';
  const away = toBack.estimate < 0.5;
  const share = { count: away ? toBack.trials - toBack.count : toBack.count, trials: toBack.trials };
  const fact = `Line slides ${away ? 'away from' : 'to'} the back ${shareWords(share)}${thinWords(share)}`;
  const sure = majoritySure(toBack);
  if (sure === 'no difference') return `${fact}: ${isThin(share) ? 'too few to say' : 'both ways'}, read it.`;
  return sure === 'clear' ? `${fact}.` : `${fact}: ${sure}.`;
}

/** The calls players must know: what kind it is, and who rushes where. */
export function callLines(plan: WeekPlan): readonly { readonly call: Call; readonly words: string }[] {
  const { library } = plan;
  if (library === null) return [];
  return numberedCalls(plan)
    .filter(({ call }) => call.family !== 'base')
    .map(({ call }) => ({
      call,
      words: `${familyAndCoverage(call)}. ${rushWords(library, call)}.`,
    }));
}
