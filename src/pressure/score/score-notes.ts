import type { CallLibrary } from '../../game/call-library.ts';
import { ANSWERS, FAMILIES, type Family } from '../../game/vocabulary.ts';
import { cellIndex } from '../evidence/evidence-cell.ts';
import { percentWords } from '../evidence/percent-words.ts';
import type { ScoreInput, ScoreModel } from './family/family-score-model.ts';
import type { ScoredWeek } from './family/family-score-week.ts';
import { sentence } from './reason/reason-words.ts';

/** What the scores could not be made from this week, and what that does to them, in sentences. */
export function scoreNotes({ library, ownFilm }: ScoreInput, week: ScoredWeek, model: ScoreModel): string[] {
  return [
    week.all.known
      ? null
      : 'Their answers were not charted: an ordinary offense stands in, and the ranking says little about this one.',
    runNote(week),
    ownFilmNote(ownFilm !== null, model),
    library === null ? 'There is no call library: only the families are scored, without a race.' : null,
    sixNote(library, model),
    library !== null && !model.race.baseRaced
      ? 'No four-man call was raced: the base is taken as it does against an average opponent, which flatters every pressure when they hold the ball and slights it when they do not.'
      : null,
  ].filter((note) => note !== null);
}

function runNote({ all }: ScoredWeek): string {
  const runs = (all.shares[ANSWERS.indexOf('run')] ?? 0) + (all.shares[ANSWERS.indexOf('quarterback_run')] ?? 0);
  return sentence(
    `open data cannot tell the families apart against runs (${percentWords(runs)} of the snaps expected): there only the trade's sheet and our own film speak`,
  );
}

const SIX_RUSH: readonly Family[] = ['hot', 'zero', 'peel', 'add_on'];

/**
 * What the race cannot see of six rushers. Measured where it could be: professional straight throws of 2022-23, six
 * rushers, 34% pressured at 1.5 to 2.0 s (20% modelled) and 67% at 3.2 to 4.0 s (80% modelled); four and five agree.
 */
function sixNote(library: CallLibrary | null, { race }: ScoreModel): string | null {
  const raced = SIX_RUSH.some((family) => !Number.isNaN(race.home[cellIndex(FAMILIES.indexOf(family), QUICK)]));
  if (library === null || !raced) return null;
  return 'The race takes the release and their protection as independent. Against six rushers a free man is often why the ball comes out at once: open data have more quick throws pressured (34% where the race gives 20%) and fewer held balls (67% where it gives 80%) than it says; for four and five rushers it agrees.';
}

const QUICK = ANSWERS.indexOf('quick');

function ownFilmNote(given: boolean, { ownFilm }: ScoreModel): string | null {
  if (!given) return 'There is no film of our own pressures: what they did for us would count before anything else.';
  const unread =
    ownFilm.unread > 0 ? ` ${ownFilm.unread} of our snaps lack the family, the answer or the outcome.` : '';
  const pressures = ownFilm.snaps.slice(1).reduce((sum, snaps) => sum + snaps, 0);
  if (pressures > 0 && (ownFilm.snaps[0] ?? 0) === 0) {
    return `Our film holds ${pressures} pressures and no four-man snap: they are compared with professional four-man figures, so the level of play is in the difference.${unread}`;
  }
  return unread === '' ? null : unread.trim();
}
