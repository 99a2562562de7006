import type { FittedTarget, ForecastFilm } from './forecast-film.ts';
import type { Target } from './forecast-result.ts';

/**
 * Games of other offenses under which an archive made forecasts worse than the own film alone, where a small archive
 * was trusted in full: measured on open professional play data of 2022 and 2023 (play-by-play nflverse, CC BY 4.0;
 * charting FTN Data via nflverse, CC BY-SA 4.0). Other targets gained from four games on.
 */
export const LEAST_ARCHIVE_GAMES: Readonly<Partial<Record<Target, number>>> = { screen: 32, motion: 16 };

/** What the archive is and what it is good for, in sentences for the page. */
export function archiveNote(film: ForecastFilm, fitted: readonly FittedTarget[]): string {
  const { archiveGames } = film;
  if (archiveGames.length === 0) return WITHOUT;
  const offenses = new Set(archiveGames.map(({ offense }) => offense)).size;
  const size = `The archive is film of ${offenses} other offense${offenses === 1 ? '' : 's'}, ${archiveGames.length} game${archiveGames.length === 1 ? '' : 's'} in all.`;
  return [size, thinSentence(fitted), silentSentence(fitted)].filter((sentence) => sentence !== '').join(' ');
}

const WITHOUT =
  'Film of other offenses would steady it: on open professional play data 32 of their games brought nearly two thirds of what a whole league of film does for run or pass.';

function thinSentence(fitted: readonly FittedTarget[]): string {
  const thin = fitted.flatMap(({ definition: { target }, archiveGames }) => {
    const least = LEAST_ARCHIVE_GAMES[target];
    if (least === undefined || archiveGames === 0 || archiveGames >= least) return [];
    return [`${THIN_WORDS[target] ?? target} (charted in ${archiveGames} of the ${least} games that takes)`];
  });
  if (thin.length === 0) return '';
  return `It is thin for ${thin.join(' and for ')}: on open professional play data so small an archive, trusted in full, did harm there. The forecast counts it for as much as its size bears, which did no clear harm, and sets none aside.`;
}

const THIN_WORDS: Readonly<Partial<Record<Target, string>>> = { screen: 'screens', motion: 'motion' };

/** Questions their own film answers and the archive does not. */
function silentSentence(fitted: readonly FittedTarget[]): string {
  const silent = fitted
    .filter(({ own, archiveGames }) => archiveGames === 0 && (own.games[0] as number) > 0)
    .map(({ definition }) => definition.label.replace(/,.*/, ''));
  if (silent.length === 0) return '';
  return `It says nothing of ${silent.join('; ')}: nobody charted that there.`;
}
