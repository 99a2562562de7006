import { type Film, filterSnaps, joinFilms, textAt } from '../game/film.ts';
import { loadFormationSchema } from './late-schemas.ts';
import { readOpponentSheets } from './read-season-sheets.ts';
import { readSettings } from './read-settings.ts';
import type { SeasonFolder } from './season-folder.ts';
import { sameTeam } from './team-slips.ts';

/** The opponent's film as the plan read it, without the rest of the season. */
export async function readOpponentFilm(folder: SeasonFolder, opponent: string): Promise<Film> {
  const book = await readSettings(folder.formationFile, loadFormationSchema);
  const sheets = await readOpponentSheets(folder, book);
  return theirSnaps(joinFilms(sheets.map(({ reading }) => reading.chart)), opponent);
}

/** The opponent's own snaps; a sheet that names no offense is all theirs. */
export function theirSnaps(chart: Film, opponent: string): Film {
  return filterSnaps(chart, (i) => sameTeam(textAt(chart, 'offense', i) ?? opponent, opponent));
}
