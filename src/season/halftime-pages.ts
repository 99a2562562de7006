import { type Film, joinFilms } from '../game/film.ts';
import type { Profile } from '../ingest/profile.ts';
import { readOwnOrForeign } from '../ingest/read-own-or-foreign.ts';
import { describeProblems, type RowProblem } from '../ingest/row-problem.ts';
import { type HalftimeUpdate, halftimeUpdate } from '../pressure/halftime/halftime.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { inOrderOfPlay } from '../pressure/snap/game-order.ts';
import { loadProfileSchema } from './late-schemas.ts';
import { readOpponentFilm } from './read-opponent-film.ts';
import { readSettings } from './read-settings.ts';
import { inputsPrint } from './seal.ts';
import { type FoundFile, holdsOpponent, readOne, readSeasonFolder, readSheets } from './season-folder.ts';
import type { Listener, OutputFile, SeasonWeek } from './store.ts';
import { savedPlan } from './sunday-plan.ts';
import { unreadFiles } from './unread-files.ts';
import { UserProblem } from './user-problem.ts';

/** Sunday's plan brought up to date, with its files, named as they are written into the week's out folder. */
export interface Halftime {
  readonly update: HalftimeUpdate;
  /** Rows of tonight's sheets kept out of the numbers. */
  readonly faults: number;
  readonly pages: readonly OutputFile[];
}

/** Groups of problems named before the rest is only counted. */
const NAMED = 8;

/**
 * Brings Sunday's plan up to date with the snaps charted tonight; nothing is written.
 *
 * @param given - sheets of live snaps, in place of the week's live….csv when there are any
 * @throws UserProblem when there is no sheet, or no usable snap in it
 */
export async function halftimePages(
  at: SeasonWeek,
  listener: Listener,
  given: readonly FoundFile[] = [],
): Promise<Halftime> {
  const live = readLive(given.length > 0 ? given : await liveSheets(at), await profileOf(at));
  for (const group of live.named) listener.note(group);
  const update = halftimeUpdate({ ...(await sundayPlan(at, listener)), live: live.chart });
  const { renderHalftime } = await import('../report/halftime/render-halftime.ts');
  const pages = [
    { name: 'halftime.html', text: await renderHalftime(update, live.faults) },
    { name: 'halftime.json', text: `${JSON.stringify(update, null, 1)}\n` },
  ];
  return { update, faults: live.faults, pages };
}

async function liveSheets(at: SeasonWeek): Promise<readonly FoundFile[]> {
  const files = await readSheets(at, at.week, /^live/i);
  if (files.length > 0) return files;
  const missing = `${at.files.shown(at.week)} holds no live….csv; name the sheet with --live <file>`;
  throw new UserProblem('usage', [missing, ...(await unreadFiles(at))].join('\n'));
}

interface LiveReading {
  readonly chart: Film;
  readonly faults: number;
  readonly named: readonly string[];
}

/** The profile that the week's other sheets are read through. */
async function profileOf(at: SeasonWeek): Promise<Profile | null> {
  const file = (await readOne(at, at.week, 'profile.yaml')) ?? (await readOne(at, '', 'profile.yaml'));
  return readSettings(file, loadProfileSchema);
}

function readLive(files: readonly FoundFile[], profile: Profile | null): LiveReading {
  const readings = files.map((file) => readOwnOrForeign(file, { kind: 'live', profile }));
  const problems = readings.flatMap((reading) => reading.problems);
  const faults = readings.reduce((sum, { rejected }) => sum + rejected.length, 0);
  const chart = inOrderOfPlay(joinFilms(readings.map((reading) => reading.chart)));
  if (chart.size === 0) throw new UserProblem('faults', ['no usable snap was found', ...lines(problems)].join('\n'));
  return { chart, faults, named: lines(problems) };
}

function lines(problems: readonly RowProblem[]): readonly string[] {
  return describeProblems(problems, NAMED);
}

/** Sunday's plan with the film behind it; null where only the plan is at hand. */
interface SundayPlan {
  readonly plan: WeekPlan;
  readonly film: Film | null;
}

/** The saved plan where it was made from the very files of the season; else it is worked out again from them. */
async function sundayPlan(at: SeasonWeek, listener: Listener): Promise<SundayPlan> {
  const saved = await savedPlan(at);
  if (saved.kind === 'sound') {
    if (!(await holdsOpponent(at))) return { plan: planAlone(saved.value, listener), film: null };
    const folder = await readSeasonFolder(at);
    if (saved.seal.inputs === inputsPrint(folder, at.platform.digest)) {
      return { plan: saved.value, film: await readOpponentFilm(folder, saved.value.opponent) };
    }
  }
  const { plannedWeek } = await import('./week-plan-source.ts');
  const { plan, week } = await plannedWeek(at, listener);
  return { plan, film: week.chart };
}

/** At the field there may be no more than the plan and tonight's sheet. */
function planAlone(plan: WeekPlan, listener: Listener): WeekPlan {
  listener.note(
    `There is no opponent….csv here to hold out/report.json to; it is taken as Sunday's plan for ${plan.opponent}`,
  );
  return plan;
}
