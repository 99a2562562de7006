import type { LineForecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { capital } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { seenValueWords } from '../words/seen-words.ts';
import { shareWords } from '../words/share-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import { majoritySure, type Sure } from '../words/sure-words.ts';

/** A key a player sees before the snap, with what it means on film. */
export interface RawKey {
  readonly see: string;
  readonly means: string;
  /** The same share with other offenses, as in "others 46%"; empty without an archive. */
  readonly others: string;
  readonly sure: Sure;
}

/** Between these shares of runs a key is even and means nothing; judgment. */
const [EVEN_FROM, EVEN_TO] = [0.42, 0.58];

/** The raw keys: how they line up, run or pass as counted on film, whether or not other offenses do the same. */
export function rawKeys(plan: WeekPlan): readonly RawKey[] {
  return plan.forecast.line
    .filter(({ situation }) => situation === ALL_SITUATIONS)
    .flatMap((line) => rawKey(plan, line))
    .sort((a, b) => b.weight - a.weight)
    .map(({ weight: _, ...key }) => key);
}

function rawKey(
  plan: WeekPlan,
  { kind, look, forecasts }: LineForecast,
): readonly (RawKey & { readonly weight: number })[] {
  const film = forecasts
    .find(({ target }) => target === 'run_or_pass')
    ?.classes.find(({ name }) => name === 'run')?.film;
  if (film === undefined || film.estimate === null || film.trials < LEAST) return [];
  const { count, trials, estimate } = film;
  const see = capital(seenValueWords(kind, look));
  const weight = Math.abs(estimate - 0.5);
  const usual = othersRun(plan, kind, look);
  if (estimate >= EVEN_FROM && estimate <= EVEN_TO)
    return [
      {
        see,
        means: `even, run ${shareWords(film)}`,
        others: othersWords(usual, estimate),
        sure: 'no difference',
        weight,
      },
    ];
  const means = estimate > 0.5 ? `run ${shareWords(film)}` : `pass ${shareWords({ count: trials - count, trials })}`;
  return [{ see, means, others: othersWords(usual, estimate), sure: majoritySure(film), weight }];
}

/** How often other offenses run from it; null without an archive. */
function othersRun({ tables }: WeekPlan, by: LineForecast['kind'], look: string): number | null {
  const rows = tables.tables.find((table) => table.by === by)?.rows;
  return rows?.find(({ value }) => value === look)?.runs.others?.usual ?? null;
}

/** Said of what they do more often: of runs, or of passes. */
function othersWords(run: number | null, own: number): string {
  if (run === null) return '';
  return `others ${percent(own < EVEN_FROM ? 1 - run : run)}`;
}

/** Fewest snaps of a key worth a player's memory; judgment. */
const LEAST = 8;
