import { type Film, textAt } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';
import type { OwnHabits } from '../menu/input.ts';
import type { OwnFilmChapter } from './result.ts';

/** What the menu must know of how we call it: our pressure rate, our paths, and the calls on our film. */
export function ownHabits({ pressures, remedy }: OwnFilmChapter, film: Film): OwnHabits {
  const calls = new Set<string>();
  for (let i = 0; i < film.size; i++) {
    const call = textAt(film, 'call', i);
    if (call !== undefined) calls.add(plainName(call));
  }
  return { pressureRate: pressures.estimate, paths: remedy.habits, callsOnFilm: calls };
}
