import type { MethodId } from '../../pressure/forecast/backtest/forecast-method.ts';

/** What each way to forecast is called in tables. */
export const METHOD_WORDS: Readonly<Record<MethodId, string>> = {
  own_rate: 'own rate',
  own_down_distance: 'own rate by down and distance',
  raw_cell: 'own rate of the finest cell, before the look',
  raw_cell_look: 'own rate of the finest cell, with the look',
  archive_rate: "other offenses' rate",
  archive_down_distance: "other offenses' rate by down and distance",
  chain_plan_own: 'the chain before the look, own games',
  chain_plan_archive: 'the chain before the look, with the archive',
  chain_line_own: 'the chain with the look, own games',
  chain_line_archive: 'the chain with the look, with the archive',
};
