import type { Film } from '../../game/film.ts';

/**
 * Works out what belongs to a film when it is first asked for, and keeps it as long as the film: a film never changes, and
 * every chapter asks again.
 *
 * @param make - gives a value that nobody writes to
 */
export function onceAFilm<Value>(make: (film: Film) => Value): (film: Film) => Value {
  const known = new WeakMap<Film, { readonly value: Value }>();
  return (film) => {
    const found = known.get(film) ?? { value: make(film) };
    known.set(film, found);
    return found.value;
  };
}
