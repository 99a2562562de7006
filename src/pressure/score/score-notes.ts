import type { CallLibrary } from '../../game/call-library.ts';
import { FAMILIES, familyFacts } from '../../game/families.ts';
import { answersAreClassified } from '../forecast/answers-classified.ts';
import type { PointsWeek } from './points-mix.ts';
import type { PointsModel, ScoreInput } from './points-model.ts';

/** Something the points could not be made from, with its numbers; the report has the sentences. */
export type ScoreNote =
  | { readonly kind: 'answers_not_charted' }
  | { readonly kind: 'kinds_not_charted' }
  | { readonly kind: 'runs'; readonly share: number }
  | { readonly kind: 'no_own_film' }
  | { readonly kind: 'own_film_unread'; readonly snaps: number }
  | { readonly kind: 'no_own_base'; readonly pressures: number }
  | { readonly kind: 'no_library' }
  | { readonly kind: 'six_rushers' }
  | { readonly kind: 'base_not_raced' };

/** What the points could not be made from this week. */
export function scoreNotes(input: ScoreInput, { all }: PointsWeek, model: PointsModel): ScoreNote[] {
  const { library, ownFilm, forecast } = input;
  return [
    ...(all.known ? [] : [{ kind: 'answers_not_charted' } as const]),
    ...(answersAreClassified(forecast.forecasts) ? [] : [{ kind: 'kinds_not_charted' } as const]),
    { kind: 'runs', share: all.shares.run + all.shares.quarterback_run },
    ...(ownFilm === null ? [{ kind: 'no_own_film' } as const] : ownFilmNotes(model)),
    ...libraryNotes(library, model),
  ];
}

function ownFilmNotes({ ownFilm }: PointsModel): ScoreNote[] {
  const pressures = Object.entries(ownFilm.snaps).reduce((sum, [family, n]) => sum + (family === 'base' ? 0 : n), 0);
  return [
    ...(ownFilm.unread > 0 ? [{ kind: 'own_film_unread', snaps: ownFilm.unread } as const] : []),
    ...(pressures > 0 && ownFilm.snaps.base === 0 ? [{ kind: 'no_own_base', pressures } as const] : []),
  ];
}

const SIX_RUSH = FAMILIES.filter((family) => familyFacts(family).men.rush === 6);

/** What the race cannot see of six rushers is said where six were raced. */
function libraryNotes(library: CallLibrary | null, { race }: PointsModel): ScoreNote[] {
  if (library === null) return [{ kind: 'no_library' }];
  return [
    ...(SIX_RUSH.some((family) => race.home[family].quick !== null) ? [{ kind: 'six_rushers' } as const] : []),
    ...(race.baseRaced ? [] : [{ kind: 'base_not_raced' } as const]),
  ];
}
