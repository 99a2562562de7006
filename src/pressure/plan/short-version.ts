import { signedPoints } from '../evidence/signed-points.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import type { MenuResult } from '../menu/result.ts';
import { FAMILY_WORDS } from '../score/family-words.ts';
import type { FamilyScore } from '../score/score-result.ts';
import type { WeekPlan } from './week-plan.ts';

/** The short version of a week: what to carry and call, why, and how sure, in sentences a coach would say aloud. */
export function shortVersion(plan: WeekPlan): string[] {
  return [
    ...menuSentences(plan),
    ...familySentences(plan),
    ...answerSentences(plan),
    ...protectionSentences(plan),
    ...tellSentences(plan),
    ...ownFilmSentences(plan),
    sureness(plan),
  ];
}

function menuSentences(plan: WeekPlan): string[] {
  const { menu } = plan;
  if (!menu) return callSentences(plan);
  if (menu.kind === 'infeasible') return [`No menu fits this week's limits; these clash: ${menu.clashing.join('; ')}.`];
  const pressures = menu.calls.filter((call) => call.family !== 'base');
  const names = pressures.map((call) => call.call);
  const value = `worth ${points(menu.value)} a game against staying in the base if the forecast holds, ${points(menu.worstValue)} if they always have their best answer`;
  return [
    `Carry ${joinWords(names)} (${menu.reps} of ${menu.repsAllowed} repetitions): ${value}.`,
    ...leadSentences(menu),
  ];
}

/** Without a menu: the call that scores best where it matters, with its interval. */
function callSentences(plan: WeekPlan): string[] {
  if (!plan.library) return ['No call library was given: the families below are ranked, the calls are yours.'];
  return ['third_long', 'second_long', 'first_ten'].flatMap((id) => {
    const situation = plan.scores.situations.find((candidate) => candidate.id === id);
    const ranked = plan.scores.calls
      .filter((score) => score.situation === id && score.family !== 'base')
      .sort((a, b) => b.points.mean - a.points.mean);
    const [best] = ranked;
    if (!situation || !best) return [];
    return [
      `On ${situation.label} ${best.call} (${FAMILY_WORDS[best.family]}) scores best of our calls: ${spreadWords(best)}.`,
    ];
  });
}

/** The first call of the situations that matter most. */
function leadSentences(menu: Extract<MenuResult, { kind: 'menu' }>): string[] {
  return ['third_long', 'second_long', 'first_ten'].flatMap((id) => {
    const situation = menu.situations.find((candidate) => candidate.id === id);
    const mixes = menu.calls
      .filter((call) => call.family !== 'base')
      .map((call) => ({ call: call.call, share: call.mix.find((part) => part.situation === id)?.share ?? 0 }))
      .filter(({ share }) => share >= 0.05)
      .sort((a, b) => b.share - a.share);
    const [first, second] = mixes;
    if (!situation || !first) return [];
    const then = second ? `, then ${second.call} ${percent(second.share)}` : '';
    return [
      `On ${situation.label}: ${first.call} ${percent(first.share)} of the snaps${then}; base ${percent(situation.baseShare)}.`,
    ];
  });
}

function familySentences(plan: WeekPlan): string[] {
  const overall = plan.scores.families.filter((score) => score.situation === 'all' && score.family !== 'base');
  const ranked = [...overall].sort((a, b) => b.points.mean - a.points.mean);
  const [best] = ranked;
  const worst = ranked[ranked.length - 1];
  if (!best || !worst) return [];
  const open = overall.filter(({ ruledOutBy }) => ruledOutBy === null);
  const first =
    best.verdict === 'ahead of base'
      ? `Pressure pays: ${FAMILY_WORDS[best.family]} saves ${spreadWords(best)}. Which pressure pays best no evidence tells: ${open.length} of ${overall.length} families cannot be told apart.`
      : `Points cannot say that pressure beats four rushers against them: ${FAMILY_WORDS[best.family]} saves ${spreadWords(best)}, and ${open.length} of ${overall.length} families cannot be told apart.`;
  const leave =
    worst.verdict === 'behind base' ? [`Leave ${FAMILY_WORDS[worst.family]} at home: ${spreadWords(worst)}.`] : [];
  return [first, ...leave];
}

function answerSentences(plan: WeekPlan): string[] {
  const overall = findForecast(plan, 'answer', 'all');
  if (overall?.ownSnaps === 0) return untoldSentences(plan, overall);
  if (!overall || overall.expected.length === 0) return [];
  const said = ['run', 'screen', 'quick', 'dropback']
    .flatMap((name) => overall.expected.filter((count) => count.name === name))
    .map((count) => `${count.low} to ${count.high} ${ANSWER_PLURAL[count.name] ?? count.name}`);
  return said.length === 0 ? [] : [`Of their next ${Math.round(overall.nextSnaps)} snaps expect ${joinWords(said)}.`];
}

/** A film that says run or pass and not which pass must not let the scores look surer than they are. */
function untoldSentences(plan: WeekPlan, { mostlyFrom }: Forecast): string[] {
  const pass = findForecast(plan, 'run_or_pass', 'all')?.classes.find(({ name }) => name === 'pass');
  if (!pass || pass.film.trials === 0) return [];
  const instead = mostlyFrom === 'the archive' ? 'other offenses stand in for them' : 'the scores rest on a guess';
  return [
    `They pass on ${pass.film.count} of ${pass.film.trials} snaps of film; which passes was not charted, so ${instead}.`,
  ];
}

function protectionSentences(plan: WeekPlan): string[] {
  const { slideToBack } = plan.protection.mix;
  if (slideToBack.estimate === null || slideToBack.trials < 10) return [];
  const away = slideToBack.estimate < 0.5;
  const [count, low, high] = away
    ? [slideToBack.trials - slideToBack.count, 1 - slideToBack.high, 1 - slideToBack.low]
    : [slideToBack.count, slideToBack.low, slideToBack.high];
  if (low <= 0.5)
    return [
      `Their slide does not follow the back clearly: ${away ? 'away from' : 'to'} him on ${count} of ${slideToBack.trials}.`,
    ];
  const send = away ? 'send it from the back’s side' : 'send it from the side away from the back';
  return [
    `They slide ${away ? 'away from' : 'to'} the back on ${count} of ${slideToBack.trials} (${percent(low)} to ${percent(high)}): ${send}.`,
  ];
}

function tellSentences(plan: WeekPlan): string[] {
  const { tells, looked } = plan.forecast.tells;
  const [tell] = tells.filter((candidate) => !candidate.oneGameOnly);
  if (looked === 0) return ['No habit of theirs was looked for: too little was charted.'];
  if (!tell)
    return [
      `No habit of theirs goes clearly beyond what down, distance and look already say (${looked.toLocaleString('en-US')} looked at).`,
    ];
  return [
    `A habit to watch: ${tell.description}, then ${tell.follows.replaceAll('_', ' ')} on ${tell.film.count} of ${tell.film.trials}; plan with ${percent(tell.planWith)} where ${percent(tell.expected)} was to be expected.`,
  ];
}

function ownFilmSentences(plan: WeekPlan): string[] {
  return plan.ownFilm ? [plan.ownFilm.predictability.words] : [];
}

function sureness(plan: WeekPlan): string {
  const { snaps, games, faults } = plan.film;
  const thin = snaps < 150 ? ' That is thin: lean on the trade, not on the decimals.' : '';
  const kept = faults > 0 ? ` ${faults} faulty rows are in no number.` : '';
  const judged = plan.forecast.backtest ? ` ${capital(plan.forecast.backtest.sentence)}` : '';
  return `How sure: ${snaps} ${snaps === 1 ? 'snap' : 'snaps'} of ${plan.opponent} in ${games.length} ${games.length === 1 ? 'game' : 'games'}.${thin}${kept}${judged}`;
}

const ANSWER_PLURAL: Readonly<Record<string, string>> = {
  run: 'runs',
  screen: 'screens',
  quick: 'quick throws',
  dropback: 'dropbacks',
};

function findForecast(plan: WeekPlan, target: Forecast['target'], situation: string): Forecast | undefined {
  return plan.forecast.forecasts.find((forecast) => forecast.target === target && forecast.situation === situation);
}

function spreadWords(score: { readonly points: FamilyScore['points'] }): string {
  const { mean, low, high } = score.points;
  return `${points(mean)} saved per ten snaps (80%: ${signedPoints(low)} to ${signedPoints(high)})`;
}

function points(value: number): string {
  return `${signedPoints(value)} points`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)}%`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function joinWords(words: readonly string[]): string {
  if (words.length <= 1) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
