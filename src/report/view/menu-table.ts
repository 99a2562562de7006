import type { MenuCall, MenuPairing, MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { answerLabel } from '../words/label.ts';
import { changeWords, leftOutWords, priceLimitWords, stepWords } from '../words/menu-words.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { situationLabel } from '../words/situation-label.ts';
import { numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';
import { isThinSituation } from './thin-situation.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** The mix: situations down, calls across, the share of snaps in every cell. */
export function mixTable(plan: WeekPlan, menu: Menu): TableView {
  return {
    id: 'mix-table',
    caption: 'How often to call what, by situation',
    columns: [
      words('Situation'),
      numbers('Snaps expected'),
      ...menu.calls.map((call) => numbers(call.call)),
      numbers('Base'),
    ],
    rows: menu.situations.map((situation): Row => {
      return {
        name: situationLabel(situation.id),
        situation: situation.id,
        ...thinMark(isThinSituation(plan, situation.id)),
        cells: [
          numberCell(snapWords(situation.expectedSnaps), situation.expectedSnaps),
          ...menu.calls.map((call) => mixCell(call, situation.id)),
          shareOrNever(unnamedBase(menu, situation.id)),
        ],
      };
    }),
    empty: 'no situation was planned',
  };
}

function snapWords(expected: number): string {
  return expected < 0.05 ? 'under 0.1' : `about ${expected.toFixed(1)}`;
}

/** The share of a situation's snaps on which a call is called, 0 when it is not. */
export function mixShare(call: MenuCall, situation: string): number {
  return call.mix.find((entry) => entry.situation === situation)?.share ?? 0;
}

/** The share of a situation's snaps left to the four-man base by no call of its own. */
export function unnamedBase(menu: Menu, situation: string): number {
  return Math.max(0, 1 - menu.calls.reduce((sum, call) => sum + mixShare(call, situation), 0));
}

/** What loosening each limit would be worth. */
export function priceTable(menu: Menu): TableView {
  return {
    id: 'price-table',
    caption: 'What each limit costs',
    columns: [words('Limit'), words('Loosened by'), numbers('Snaps a game gained'), words('What would change')],
    rows: menu.prices.map((price) => ({
      name: priceLimitWords(price),
      cells: [
        textCell(stepWords(price.step)),
        numberCell(signed(price.gain), price.gain),
        textCell(changeWords(price)),
      ],
    })),
    empty: 'no limit binds',
  };
}

/** The calls that are not carried, with the reason. */
export function leftOutTable(menu: Menu): TableView {
  return {
    id: 'left-out-table',
    caption: 'Left out this week',
    columns: [words('Call'), words('Why')],
    rows: menu.leftOut.map((entry) => ({ name: entry.call, cells: [textCell(leftOutWords(entry.why))] })),
    empty: 'every call is carried',
  };
}

/** What will follow each path over the game if the mix is kept. */
export function menuPairingTable(menu: Menu): TableView {
  return {
    id: 'menu-pairing-table',
    caption: 'What a reader of our film would see behind each path, if the mix is kept',
    columns: [
      words('Path'),
      words('Coverage'),
      numbers('Share of the path'),
      numbers('Calls of the path'),
      words('Limit'),
    ],
    rows: menu.pairings.map((pairing) => ({
      name: pairing.path,
      cells: [
        textCell(pairing.coverage),
        numberCell(percent(pairing.share), pairing.share),
        pairing.calls === undefined ? textCell('') : numberCell(pairing.calls.toFixed(1), pairing.calls),
        textCell(limitWords(pairing)),
      ],
    })),
    empty: 'no path is called',
  };
}

function limitWords({ most, uncounted = 0 }: MenuPairing): string {
  if (most === undefined || most >= 1) return 'none';
  if (uncounted === 0) return `at most ${percent(most)}`;
  const calls = Number.isInteger(uncounted) ? String(uncounted) : uncounted.toFixed(1);
  return `at most ${percent(most)} beyond the first ${calls} a game`;
}

/** Their answer that hurts the mix most in each situation. */
export function worstTable(menu: Menu): TableView {
  return {
    id: 'worst-table',
    caption: 'If the forecast is wrong: the answer that hurts the mix most',
    columns: [words('Situation'), words('Their answer'), numbers('Points per ten snaps against the base')],
    rows: menu.situations.flatMap(({ id, worst }) =>
      worst === undefined
        ? []
        : [
            {
              name: situationLabel(id),
              situation: id,
              cells: [textCell(answerLabel(worst.answer)), numberCell(signed(worst.points), worst.points)],
            },
          ],
    ),
    empty: 'not worked out',
  };
}

function mixCell(call: MenuCall, situation: string) {
  return shareOrNever(mixShare(call, situation));
}

function shareOrNever(share: number) {
  return numberCell(share < 0.005 ? 'never' : percent(share), share);
}
