import type { FittedTarget, ForecastFilm } from './forecast-film.ts';

/**
 * What the archive is and how much it counts, in sentences for the page.
 *
 * @param ownShare - how much of the forecasts is the opponent's own film, 0 to 1
 */
export function archiveNote(film: ForecastFilm, fitted: readonly FittedTarget[], ownShare: number): string {
  const { archiveGames } = film;
  if (archiveGames.length === 0) return WITHOUT;
  const offenses = new Set(archiveGames.map(({ offense }) => offense)).size;
  const size = `The archive is film of ${offenses} other offense${offenses === 1 ? '' : 's'}, ${archiveGames.length} game${archiveGames.length === 1 ? '' : 's'} in all.`;
  const own = Math.round(100 * ownShare);
  const shares = `Over all snaps their own film counts ${own}%, the other offenses ${100 - own}%.`;
  return [size, shares, silentSentence(fitted)].filter((sentence) => sentence !== '').join(' ');
}

const WITHOUT =
  'Film of other offenses would steady it: on open professional play data 32 of their games brought nearly two thirds of what a whole league of film does for run or pass.';

/** Questions their own film answers and the archive does not. */
function silentSentence(fitted: readonly FittedTarget[]): string {
  const silent = fitted
    .filter(({ own, archiveGames }) => archiveGames === 0 && (own.games[0] as number) > 0)
    .map(({ definition }) => definition.label.replace(/,.*/, ''));
  if (silent.length === 0) return '';
  return `It says nothing of ${silent.join('; ')}: nobody charted that there.`;
}
