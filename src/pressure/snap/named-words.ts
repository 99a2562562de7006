import type { ColumnName } from '../../game/columns.ts';
import { type Film, textAt } from '../../game/film.ts';

/**
 * Whether a snap's own word in a column of the staff's names matches; undefined where it was not charted, and in a file
 * in which no name matches at all: there nobody separated such plays, which is not the same as never running one.
 */
export function namedWords(film: Film, column: ColumnName, name: RegExp): (index: number) => boolean | undefined {
  const tellsApart = new Set<number>();
  for (let i = 0; i < film.size; i++) {
    if (name.test(textAt(film, column, i) ?? '')) tellsApart.add(film.sourceOf[i] as number);
  }
  return (index) => {
    const word = textAt(film, column, index);
    return word === undefined || !tellsApart.has(film.sourceOf[index] as number) ? undefined : name.test(word);
  };
}
