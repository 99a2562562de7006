import type { Tell } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Grid } from '../chart/matrix-grid.ts';
import { className } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { seenWords } from '../words/seen-words.ts';
import type { ChartView } from './block.ts';
import { numberCell, numbers, type Row, shareCell, type TableView, textCell, words } from './table-view.ts';

/** The tells game by game: how often the habit held in each game. */
export function tellsChart(plan: WeekPlan): ChartView {
  const { tells } = plan.forecast.tells;
  const first = tells[0];
  return {
    id: 'tells-by-game',
    title:
      first === undefined
        ? 'No tell stood out'
        : `${seenWords(first.seen)}: ${tellFollows(first).toLowerCase()} followed on ${first.film.count} of ${first.film.trials}`,
    caption:
      'How often it held in each game. A stronger tint is more often. Hatched: they did not show the look in that game.',
    drawing: tells.length === 0 ? null : { kind: 'grid', grid: tellGrid(tells) },
    empty: 'No tell stood out, so nothing is drawn.',
    table: tellsTable(tells),
  };
}

/** What follows a tell, in words. */
export function tellFollows(tell: Tell): string {
  return className(tell.target, tell.follows);
}

/** The games in which any tell was looked for, in the plan's order. */
export function tellGames(tells: readonly Tell[]): readonly string[] {
  return [...new Set(tells.flatMap((tell) => tell.games.map((game) => game.game)))];
}

function tellGrid(tells: readonly Tell[]): Grid {
  const games = tellGames(tells);
  const rows = tells.map((tell) => ({
    label: `${seenWords(tell.seen)}: ${tellFollows(tell).toLowerCase()}`,
    note: `${percent(tell.expected)}, ${percent(tell.planWith)}`,
    cells: games.map((game) => {
      const found = tell.games.find((entry) => entry.game === game);
      if (found === undefined || found.trials === 0) return { text: 'no snaps', strength: 0, state: 'none' as const };
      return {
        text: `${found.count} of ${found.trials}`,
        strength: found.count / found.trials,
        state: 'filled' as const,
      };
    }),
  }));
  return { columns: games, noteTitle: 'Expected, plan with', rows };
}

function tellsTable(tells: readonly Tell[]): TableView {
  const games = tellGames(tells);
  return {
    id: 'tells-table',
    caption: 'Tells game by game',
    columns: [
      words('When you see'),
      words('Then'),
      numbers('On film'),
      numbers('Forecast expected'),
      numbers('Plan with'),
      ...games.map(numbers),
      words('Chance of being chance'),
    ],
    rows: tells.map((tell) => tellRow(tell, games)),
    empty: 'no tell stood out',
  };
}

function tellRow(tell: Tell, games: readonly string[]): Row {
  return {
    name: seenWords(tell.seen),
    cells: [
      textCell(tellFollows(tell)),
      shareCell(tell.film),
      numberCell(percent(tell.expected), tell.expected),
      numberCell(percent(tell.planWith), tell.planWith),
      ...games.map((game) => gameCell(tell, game)),
      textCell(
        `p ${fixed(tell.p, 4)}, corrected ${fixed(tell.adjusted, 3)}${tell.oneGameOnly ? '; one game only' : ''}`,
      ),
    ],
  };
}

function gameCell(tell: Tell, game: string) {
  const found = tell.games.find((entry) => entry.game === game);
  if (found === undefined || found.trials === 0) return numberCell('no snaps', -1);
  return numberCell(`${found.count} of ${found.trials}`, found.count / found.trials);
}
