import { fitArchive, fitOpponent } from '../additive/additive.ts';
import type { AdditiveBase } from '../additive/additive-base.ts';
import { type AdditiveFilm, additiveFilm, unchartedColumns } from '../additive/additive-film.ts';
import type { ChainData } from '../chain-data.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { BacktestFilm } from './backtest-film.ts';
import type { ForecastMethod, Predict } from './forecast-method.ts';
import type { WindowFilm } from './window-film.ts';

/**
 * The additive model, before the look and with it. Apart from the other methods because it takes its time: one fit of a
 * whole archive for every offense and target.
 */
export function additiveMethods(): readonly ForecastMethod[] {
  const films = new WeakMap<BacktestFilm, AdditiveFilm>();
  const filmOf = (film: BacktestFilm) => {
    const known = films.get(film) ?? additiveFilm(film.chart, film.cells);
    films.set(film, known);
    return known;
  };
  return [
    additive('plan', 'the additive model before the look', filmOf),
    additive('line', 'the additive model with the look', filmOf),
  ];
}

type Archive = NonNullable<ChainData['archive']>;

function additive(knows: ChainKind, words: string, filmOf: (film: BacktestFilm) => AdditiveFilm): ForecastMethod {
  const bases = new WeakMap<Archive, Map<string, AdditiveBase | null>>();
  const fit = (window: WindowFilm): Predict => {
    const film = filmOf(window.film);
    const own = window.window.own.flatMap(({ rows }) => rows);
    const task = { film, name: window.definition.target, target: window.target, reading: knows, own };
    const archiveRows = () => window.window.archive.flatMap(({ rows }) => rows);
    const base = kept(basesOf(bases, window), [...unchartedColumns(film.levels, own)].join(), () =>
      fitArchive(task, archiveRows()),
    );
    const { rows } = window.window.test;
    const shares = fitOpponent(task, base)(rows);
    const place = new Map(rows.map((row, i) => [row, i]));
    const { classes } = window.target;
    return (row) => {
      const at = (place.get(row) ?? 0) * classes;
      return shares.subarray(at, at + classes);
    };
  };
  return { id: `additive_${knows}`, words, knows, against: AGAINST[knows], fit };
}

const AGAINST: Readonly<Record<ChainKind, readonly string[]>> = {
  plan: ['own_rate', 'own_down_distance', 'archive_down_distance', 'chain_plan_archive'],
  line: ['own_rate', 'own_down_distance', 'archive_down_distance', 'chain_line_archive'],
};

/** The archive's fits so far; windows that share an archive, read alike, share its tally and so their fits. */
function basesOf(bases: WeakMap<Archive, Map<string, AdditiveBase | null>>, window: WindowFilm) {
  const archive = window.archive('plan');
  const known = (archive && bases.get(archive)) ?? new Map<string, AdditiveBase | null>();
  if (archive) bases.set(archive, known);
  return known;
}

function kept<Value>(known: Map<string, Value>, key: string, make: () => Value): Value {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}
