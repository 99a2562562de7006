import type { Call } from '../../game/call-library.ts';
import type { Forecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Share } from '../../stats/share.ts';
import { rushWords } from '../view/call-words.ts';
import { isCarried } from '../view/carried-calls.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { tellFollows } from '../view/tells-chart.ts';
import { answerInSentence, capital, familyLabel, plainWords } from '../words/label.ts';
import { planSituations } from '../words/situation-label.ts';

/** What players should expect, situation by situation, in words without numbers; rare situations are left out. */
export function expectLines(plan: WeekPlan): readonly { readonly where: string; readonly what: string }[] {
  const cells = knownForecasts(plan, 'answer');
  return planSituations(plan)
    .filter((situation) => situation.expectedSnaps >= OFTEN_ENOUGH)
    .flatMap((situation) => {
      const cell = cells.find((entry) => entry.situation === situation.id);
      return cell === undefined ? [] : [{ where: situation.label, what: expectWords(cell) }];
    });
}

/** Snaps a game from which on a situation is worth a player's memory; judgement. */
const OFTEN_ENOUGH = 2;

function expectWords(cell: Forecast): string {
  const ranked = [...cell.classes].sort((a, b) => b.share - a.share).slice(0, 2);
  const [first, second] = ranked.map((entry) => answerInSentence(entry.name));
  const screen = cell.classes.find((entry) => entry.name === 'screen')?.share ?? 0;
  const alert = screen >= 0.2 && first !== 'screen' && second !== 'screen' ? '; alert screen' : '';
  return `${first ?? 'not known'}${second === undefined ? '' : `, then ${second}`}${alert}`;
}

/** What to look for before the snap, in words. */
export function watchLines(plan: WeekPlan): readonly string[] {
  const tells = plan.forecast.tells.tells.slice(0, 4);
  if (tells.length === 0) return ['Nothing gives them away before the snap. Play your keys.'];
  return tells.map((tell) => `${tell.description}: expect ${tellFollows(tell).toLowerCase()}.`);
}

/** How they protect, in words; says what was assumed. */
export function protectLines(plan: WeekPlan): readonly string[] {
  const { mix } = plan.protection;
  const lines = [
    commonest(
      'protect',
      mix.protectors.map(({ count, share }) => ({ name: `${numberWord(count)} protect`, share })),
    ),
    slideLine(mix.slideToBack.estimate),
    commonest(
      'back',
      mix.backJobs.map(({ job, share }) => ({ name: JOB_WORDS[job] ?? plainWords(job), share })),
    ),
  ].filter((line) => line !== '');
  return lines.length === 0 ? ['Not charted: expect six, and read the back.'] : lines;
}

/** The commonest kind, called "mostly" only above half; otherwise the two commonest. */
function commonest(
  what: 'protect' | 'back',
  kinds: readonly { readonly name: string; readonly share: Share }[],
): string {
  const [first, second] = [...kinds].sort((a, b) => b.share.count - a.share.count);
  if (first === undefined || first.share.count === 0) return '';
  const before = what === 'back' ? 'Back on a pass: ' : '';
  if ((first.share.estimate ?? 0) > 0.5) return capital(`${before}mostly ${first.name}.`);
  const also = second === undefined || second.share.count === 0 ? '' : ` or ${second.name}`;
  return capital(`${before}${first.name}${also}.`);
}

/** What the back does, as a player says it. */
const JOB_WORDS: Readonly<Record<string, string>> = {
  blocks: 'stays and blocks',
  check_releases: 'checks, then gets out',
  releases_wide: 'gets out wide',
  releases_inside: 'gets out inside',
  none: 'no back',
};

const NUMBER_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

function numberWord(count: number): string {
  return NUMBER_WORDS[count] ?? String(count);
}

function slideLine(toBack: number | null): string {
  if (toBack === null) return '';
  if (toBack >= 0.6) return 'The line usually turns to the back.';
  return toBack <= 0.4 ? 'The line usually turns away from the back.' : 'The line turns both ways.';
}

/** The calls players must know: what kind it is, and who rushes where. */
export function callLines(plan: WeekPlan): readonly { readonly call: Call; readonly words: string }[] {
  const { library } = plan;
  if (library === null) return [];
  return library.calls
    .filter((call) => call.family !== 'base' && isCarried(plan)(call.name))
    .map((call) => ({
      call,
      words: `${familyLabel(call.family).toLowerCase()}, ${call.coverage}. ${rushWords(library, call)}.`,
    }));
}
