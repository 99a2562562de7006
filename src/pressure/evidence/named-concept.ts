import { type Film, textAt } from '../../game/film.ts';

/**
 * Whether a snap's concept is one whose name matches; undefined where it was not charted, and in a file in which no name
 * matches at all: there nobody told such concepts apart, which is not the same as never running one.
 */
export function namedConcepts(chart: Film, name: RegExp): (index: number) => boolean | undefined {
  const tellsApart = new Set<number>();
  for (let i = 0; i < chart.size; i++) {
    if (name.test(textAt(chart, 'concept', i) ?? '')) tellsApart.add(chart.sourceOf[i] ?? 0);
  }
  return (index) => {
    const concept = textAt(chart, 'concept', index);
    return concept === undefined || !tellsApart.has(chart.sourceOf[index] ?? 0) ? undefined : name.test(concept);
  };
}
