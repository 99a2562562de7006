// biome-ignore-all lint/suspicious/noTemplateCurlyInString: these are texts of source files
import { readFileSync } from 'node:fs';
import type { Mutant } from './mutants.ts';

type Planted = readonly [file: string, was: string, becomes: string];

/** Lies a page could tell with every formula right: charts drawn wrong, numbers and words exchanged. */
const PLANTED: readonly Planted[] = [
  [
    'src/report/chart/strip.ts',
    '[stripPlace(low, domain), stripPlace(high, domain)]',
    '[stripPlace(low, domain), stripPlace(low, domain)]',
  ],
  ['src/report/chart/strip.ts', 'cx="${stripPlace(value, domain)}"', 'cx="${stripPlace(0.5, domain)}"'],
  ['src/report/chart/share-row.ts', 'value: estimate, low, high', 'value: estimate, low: estimate, high: estimate'],
  ['src/report/layout/grid.ts', 'Math.ceil(strength * 4 - 1e-9)', '4 - Math.ceil(strength * 4 - 1e-9)'],
  ['src/report/chart/chart-config.ts', 'Math.ceil(strength * 4 - 1e-9)', '4 - Math.ceil(strength * 4 - 1e-9)'],
  ['src/report/chart/race-spec.ts', 'seconds: race.arrival, label', 'seconds: race.arrival / 2, label'],
  ['src/report/chart/race-spec.ts', 'point.seconds >= race.arrival', 'point.seconds <= race.arrival'],
  ['src/report/chart/race-spec.ts', '[0, lastSecond]', '[lastSecond, 0]'],
  ['src/report/view/forecast-chart.ts', 'second: film.estimate', 'second: share'],
  ['src/report/view/forecast-chart.ts', 'b.share - a.share', 'a.share - b.share'],
  ['src/report/view/family-chart.ts', 'value: mean, low, high', 'value: mean, low: mean, high: mean'],
  ['src/report/view/family-table.ts', 'b.points.mean - a.points.mean', 'a.points.mean - b.points.mean'],
  ['src/report/view/race-chart.ts', 'second: typical', 'second: home'],
  ['src/report/view/race-chart.ts', 'value: home, low, high', 'value: home, low: home, high: home'],
  [
    'src/report/view/answer-matrix.ts',
    'strength: entry.share / DARKEST_SHARE',
    'strength: 1 - entry.share / DARKEST_SHARE',
  ],
  [
    'src/report/view/tells-chart.ts',
    'strength: found.count / found.trials',
    'strength: 1 - found.count / found.trials',
  ],
  ['src/report/view/pairing-chart.ts', 'strength: share?.estimate ?? 0', 'strength: 1 - (share?.estimate ?? 0)'],
  [
    'src/report/view/family-situation-matrix.ts',
    'strength: score.points.mean / DARKEST_POINTS',
    'strength: -score.points.mean / DARKEST_POINTS',
  ],
  ['src/report/view/guess-chart.ts', 'fixed(100 * difference, 0)}`', 'fixed(1000 * difference, 0)}`'],
  ['src/report/view/guess-chart.ts', '[gain.low, gain.high]', '[gain.high, gain.low]'],
  ['src/report/view/season-chart.ts', 'high: outer.high / snaps', 'high: outer.low / snaps'],
  ['src/report/view/season-chart.ts', 'second: came / snaps', 'second: expected'],
  ['src/report/review/calibration-chart.ts', 'second: forecast }', 'second: low }'],
  ['src/report/first/mix-matrix.ts', 'percent(share)}</td>', 'percent(1 - share)}</td>'],
  [
    'src/report/words/why-words.ts',
    'slideToBack.trials - slideToBack.count : slideToBack.count',
    'slideToBack.count : slideToBack.count',
  ],
  ['src/report/words/why-words.ts', '${found.low}-${found.high}', '${found.high}-${found.high}'],
  [
    'src/report/view/family-table.ts',
    'chanceCell(score.chanceBetterThanBase),\n      numberCell(',
    'chanceCell(score.regret),\n      numberCell(',
  ],
  ['src/report/words/percent.ts', 'Math.round(share * 100)', 'Math.round(share * 10)'],
  ['src/report/words/percent.ts', '${Math.round(low * 100)}-', '${Math.round(high * 100)}-'],
  ['src/report/words/number-words.ts', '`+${text}`', 'text'],
  [
    'src/report/words/share-words.ts',
    '${plainCount(count)} of ${plainCount(trials)}',
    '${plainCount(trials)} of ${plainCount(count)}',
  ],
  ['src/report/words/sure-words.ts', 'least: 0.8,', 'least: 0.4,'],
  ['src/report/words/monday-words.ts', "'drop' : 'fix'", "'fix' : 'drop'"],
];

/** The planted changes as mutants; each text stands once in its file, or the list has to be mended. */
export function plantedMutants(): readonly Mutant[] {
  return PLANTED.map(([file, was, becomes]) => {
    const text = readFileSync(file, 'utf8');
    const start = text.indexOf(was);
    if (start < 0 || text.indexOf(was, start + 1) >= 0) throw new Error(`${file} does not hold this once: ${was}`);
    const line = text.slice(0, start).split('\n').length;
    return { file, line, start, end: start + was.length, was, becomes };
  });
}
