import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type TellFeature, tellFeatures } from '../forecast/tell-feature.ts';
import { gamesInOrder } from '../snap/game-order.ts';
import { outcomeAt } from '../snap/outcome.ts';

/**
 * What an opponent may go by before our snap: all we go by ourselves, and what is seen of a defense only: what came just
 * before, the first snap of a series, a look shown early.
 */
export function seenBefore(film: Film, cuts: SituationCuts): readonly TellFeature[] {
  const before = snapsBefore(film);
  return [
    ...tellFeatures(film, cuts),
    { name: 'after_big_play', valueAt: (i) => afterBigPlay(film, before[i]) },
    { name: 'series', valueAt: (i) => seriesOf(film, i, before[i]) },
    { name: 'shown_early', valueAt: (i) => textAt(film, 'shown_early', i) },
  ];
}

/** The snap before each one in its game. */
function snapsBefore(film: Film): (number | undefined)[] {
  const before = new Array<number | undefined>(film.size).fill(undefined);
  for (const order of gamesInOrder(film)) {
    order.forEach((row, i) => {
      before[row] = order[i - 1];
    });
  }
  return before;
}

function afterBigPlay(film: Film, before: number | undefined): string | undefined {
  const outcome = before === undefined ? undefined : outcomeAt(film, before);
  if (outcome === undefined) return undefined;
  return outcome === 'explosive' ? 'yes' : 'no';
}

function seriesOf(film: Film, index: number, before: number | undefined): string | undefined {
  const drive = numberAt(film, 'drive', index);
  if (drive === undefined) return undefined;
  const earlier = before === undefined ? undefined : numberAt(film, 'drive', before);
  if (before !== undefined && earlier === undefined) return undefined;
  return earlier === drive ? 'later' : 'first';
}
