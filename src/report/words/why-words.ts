import type { CallFit } from '../../pressure/fit/fit-result.ts';
import type { Forecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { ProtectionMix } from '../../pressure/protection/protection-result.ts';
import { firedWords, fitWords, ofTen } from './fit-words.ts';
import { answerInSentence, capital } from './label.ts';
import { listed } from './number-words.ts';
import { shareWords, thinWords } from './share-words.ts';
import { ALL_SITUATIONS } from './situation-label.ts';
import { pointsWords } from './spread-words.ts';
import { majoritySure, type Sure, sureOf } from './sure-words.ts';

/** A statement of the first screen with how sure it is; null where it is a plain count or a fact of the plan. */
export interface Statement {
  readonly words: string;
  readonly sure: Sure | null;
}

/** Why the calls are what they are, in three to five sentences: pressure as such, what to expect, how they protect. */
export function whyStatements(plan: WeekPlan): readonly Statement[] {
  return [
    ...fitStatement(plan),
    ...pressurePays(plan),
    ...expectAnswers(plan),
    ...slideStatement(plan.protection.mix),
    ...backStatement(plan),
  ];
}

/**
 * The pressure we call most of those that are right more often than wrong against them, and the rules behind it; or that
 * none is, and how much cannot be judged.
 */
function fitStatement({ menu, fit }: WeekPlan): readonly Statement[] {
  if (menu?.kind !== 'menu') return [];
  const called = menu.calls.filter(({ family }) => family !== 'base');
  const fits = called.flatMap(({ call }) =>
    fit.calls.filter((one) => one.call === call && one.situation === ALL_SITUATIONS),
  );
  const [most] = fits;
  if (most === undefined) return [];
  const found = fits.find(({ net }) => net.mean >= PLAIN_LEAD);
  if (found === undefined) return [noneFits(most)];
  const rules = fit.families.find(
    ({ family, situation }) => family === found.family && situation === ALL_SITUATIONS,
  )?.rules;
  const why = firedWords(rules ?? [], 'right', found.family);
  return [
    { words: `Over all their snaps ${found.call} is ${fitWords(found)}${why === '' ? '' : ` (${why})`}.`, sure: null },
  ];
}

function noneFits({ call, unknown }: CallFit): Statement {
  const open =
    unknown < MUCH_OPEN ? '' : ` ${ofTen(unknown)} of 10 snaps with ${call} can’t be judged: too little is charted.`;
  return {
    words: `No pressure we carry is right plainly more often than wrong; the mix spreads them.${open}`,
    sure: null,
  };
}

/** Right less wrong from which on a call is said to fit: half a snap in ten. Judgment. */
const PLAIN_LEAD = 0.05;

/** From this share of snaps on the page says that they cannot be judged. Judgment. */
const MUCH_OPEN = 0.25;

/** What pressure as such pays against the base, and that points do not pick the kind. */
function pressurePays({ scores }: WeekPlan): readonly Statement[] {
  const ranked = scores.families
    .filter(({ situation, family }) => situation === ALL_SITUATIONS && family !== 'base')
    .sort((a, b) => b.points.mean - a.points.mean);
  const [best] = ranked;
  if (best === undefined) return [];
  const open = ranked.filter(({ ruledOutBy }) => ruledOutBy === null).length;
  const kinds = open > 1 ? ` On points ${open} kinds are level.` : '';
  const words = `Pressure pays: up to ${pointsWords(best.points.mean)} over the base.${kinds}`;
  return [{ words, sure: sureOf(best.chanceBetterThanBase) }];
}

/** The counts to expect on Friday of what they do most. */
function expectAnswers(plan: WeekPlan): readonly Statement[] {
  const overall = overallForecast(plan, 'answer');
  if (overall === undefined) return [];
  if (overall.ownSnaps === 0) return passesNotCharted(plan, overall);
  const said = ['run', 'screen', 'quick', 'dropback'].flatMap((name) => {
    const found = overall.expected.find((count) => count.name === name);
    return found === undefined
      ? []
      : [`${found.low}-${found.high} ${ANSWERS_IN_PLURAL[name] ?? answerInSentence(name)}`];
  });
  if (said.length === 0) return [];
  return [{ words: `Of their next ${Math.round(overall.nextSnaps)} snaps expect ${listed(said)}.`, sure: null }];
}

const ANSWERS_IN_PLURAL: Readonly<Record<string, string>> = {
  run: 'runs',
  screen: 'screens',
  quick: 'quick throws',
  dropback: 'dropbacks',
};

/** A film that says run or pass and not which pass must not let the plan look surer than it is. */
function passesNotCharted(plan: WeekPlan, { mostlyFrom }: Forecast): readonly Statement[] {
  const pass = overallForecast(plan, 'run_or_pass')?.classes.find(({ name }) => name === 'pass');
  if (pass === undefined || pass.film.trials === 0) return [];
  const instead = mostlyFrom === 'archive' ? 'the plan borrows them from other offenses' : 'the plan has to guess';
  return [
    { words: `They pass on ${shareWords(pass.film)}. What kind of pass was not charted: ${instead}.`, sure: null },
  ];
}

/** Where the line slides and which side that opens; an order only on enough snaps and a clear count. */
function slideStatement({ slideToBack }: ProtectionMix): readonly Statement[] {
  if (slideToBack.estimate === null) return [];
  const away = slideToBack.estimate < 0.5;
  const count = away ? slideToBack.trials - slideToBack.count : slideToBack.count;
  const fact = `They slide ${away ? 'away from' : 'to'} the back on ${shareWords({ count, trials: slideToBack.trials })}${thinWords(slideToBack)}`;
  const sure = majoritySure(slideToBack);
  const side = away ? 'to the back' : 'away from the back';
  if (sure === 'no difference') return [{ words: `${fact}: no side to live on.`, sure }];
  return [{ words: `${fact}: ${sure === 'clear' ? 'send it' : 'lean'} ${side}.`, sure }];
}

/** What the back does most on a pass. */
function backStatement({ protection }: WeekPlan): readonly Statement[] {
  const [first] = [...protection.mix.backJobs].sort((a, b) => b.share.count - a.share.count);
  if (first === undefined || first.share.trials === 0) return [];
  const job = BACK_JOBS[first.job] ?? first.job;
  return [
    {
      words: `${capital(job)} on ${shareWords(first.share)} of their charted passes${thinWords(first.share)}.`,
      sure: null,
    },
  ];
}

/** What the back does, with him as the subject. */
export const BACK_JOBS: Readonly<Record<string, string>> = {
  blocks: 'the back stays in to block',
  check_releases: 'the back checks, then gets out',
  releases_wide: 'the back gets out wide',
  releases_inside: 'the back gets out inside',
  none: 'no back is in the backfield',
};

function overallForecast(plan: WeekPlan, target: Forecast['target']): Forecast | undefined {
  return plan.forecast.forecasts.find((entry) => entry.target === target && entry.situation === ALL_SITUATIONS);
}
