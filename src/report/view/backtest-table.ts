import type { BacktestTarget, BacktestVerdict } from '../../pressure/forecast/forecast-result.ts';
import { TARGET_LABELS } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** The forecast judged on their own film beside three plainer ways to guess; lower is better. */
export function backtestTable(backtest: BacktestVerdict): TableView {
  return {
    id: 'backtest-table',
    caption: 'Forecast judged on games it had not seen: average surprise a snap, lower is better',
    columns: [
      words('Question'),
      numbers('This forecast'),
      numbers('Plain rate'),
      numbers('Down and distance'),
      numbers('Raw cell'),
      words('Against the plain rate'),
    ],
    rows: backtest.targets.map(backtestRow),
    empty: 'no question could be judged',
  };
}

function backtestRow(target: BacktestTarget): Row {
  const error =
    target.standardError === null ? 'too few games for an error' : `give or take ${fixed(target.standardError, 3)}`;
  return {
    name: TARGET_LABELS[target.target],
    cells: [
      lossCell(target.model),
      lossCell(target.plainRate),
      lossCell(target.downAndDistance),
      lossCell(target.rawCell),
      textCell(
        `better in ${target.gamesWon} of ${target.games} games, ${target.snaps} snaps; ${fixed(target.difference, 3)}, ${error}`,
      ),
    ],
  };
}

function lossCell(loss: number) {
  return numberCell(fixed(loss, 3), loss);
}
