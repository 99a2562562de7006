import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { OwnFilmChapter } from '../../pressure/self-scout/result.ts';
import { counted, signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { shareWithInterval } from '../words/share-words.ts';
import { numberCell, numbers, type TableView, textCell, words } from './table-view.ts';

/** From our film to the menu and back: what a reader guesses, the cap, the swaps, and how he fares on this week's plan. */
export function loopTable(plan: WeekPlan, film: OwnFilmChapter): TableView {
  return {
    id: 'film-loop',
    caption: 'From our film to the menu: how often the path gives away the coverage',
    columns: [words('Step'), words('What it says')],
    rows: [
      { name: 'Our film', cells: [textCell(filmWords(film))] },
      { name: 'The cap', cells: [textCell(`${percent(film.remedy.cap)} at most`)] },
      { name: 'What to swap', cells: [textCell(swapWords(film))] },
      { name: 'This week’s menu', cells: [textCell(planWords(plan.menu, film))] },
    ],
    empty: 'nothing was charted',
  };
}

function filmWords({ guesses }: OwnFilmChapter): string {
  const path = guesses.find(({ knows }) => knows === 'path');
  return path === undefined ? 'too little film to tell' : `right on ${shareWithInterval(path.share)}`;
}

function swapWords({ remedy }: OwnFilmChapter): string {
  const snaps = remedy.swaps.reduce((sum, swap) => sum + swap.snaps, 0);
  if (snaps === 0) return remedy.givesAway ? 'nothing that we carry allows' : 'nothing';
  const games = counted(remedy.games, 'game', 'games');
  return `${snaps} of about ${Math.round(remedy.coming)} pressures in the next ${games}, worth ${signed(-remedy.costPoints)} points by the scores`;
}

function planWords(menu: MenuResult | null, { onPlan }: OwnFilmChapter): string {
  if (menu === null || onPlan === null) return 'no menu was chosen';
  if (onPlan.rate === null) return 'no pressure is planned';
  return `off our film they are right on ${percent(onPlan.rate)} of about ${Math.round(onPlan.calls)} pressures`;
}

/** The fewest swaps by each number of games. */
export function byGamesTable({ remedy }: OwnFilmChapter): TableView {
  return {
    id: 'by-games-table',
    caption: 'Fewest snaps to swap, by how many games it may take',
    columns: [
      words('Games'),
      numbers('Needed'),
      numbers('Can be swapped'),
      numbers('They are then right on'),
      numbers('Points'),
    ],
    rows: remedy.byGames.map(({ games, needed, done, reaches, costPoints }) => ({
      name: counted(games, 'game', 'games'),
      cells: [
        numberCell(String(needed), needed),
        numberCell(done.toFixed(0), done),
        numberCell(percent(reaches), reaches),
        numberCell(signed(-costPoints), -costPoints),
      ],
    })),
    empty: 'nothing has to be swapped',
  };
}

/** What a reader who goes by our film would guess behind each path of this week's menu, and how often he is right. */
export function readerTable({ onPlan }: OwnFilmChapter): TableView {
  return {
    id: 'reader-table',
    caption: 'What they would guess behind each path of this week’s menu',
    columns: [words('Path'), words('They guess'), words('Because'), numbers('Calls a game'), numbers('Right')],
    rows: (onPlan?.paths ?? []).map(({ path, known, guess, right, calls }) => ({
      name: path,
      cells: [
        textCell(guess),
        textCell(known ? 'our film shows it behind this path' : 'it is what we play most; he hardly knows this path'),
        numberCell(calls.toFixed(1), calls),
        numberCell(percent(right), right),
      ],
    })),
    empty: 'no menu was chosen',
  };
}
