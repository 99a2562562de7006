import type { ColumnName } from '../../game/columns.ts';
import { codeAt, type Film } from '../../game/film.ts';

/**
 * The class of a snap by the word in one of its columns, worked out once for each different word: charts have millions
 * of snaps and a handful of words.
 *
 * @param classOf - the class of a word; undefined stands for not charted
 */
export function wordClasses<Class>(
  chart: Film,
  column: ColumnName,
  classOf: (word: string | undefined) => Class,
): (index: number) => Class {
  const found = chart.columns[column];
  const notCharted = classOf(undefined);
  const classes = found?.kind === 'code' ? found.values.map((word, i) => (i === 0 ? notCharted : classOf(word))) : [];
  return (index) => {
    const code = codeAt(chart, column, index);
    return code === 0 ? notCharted : (classes[code] as Class);
  };
}
