import type { MenuCall, MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { tintClass } from '../layout/grid.ts';
import { type Html, html, trusted } from '../page/html.ts';
import { mixShare, unnamedBase } from '../view/menu-table.ts';
import { scoringZoneRows } from '../view/zone-rows.ts';
import { percent } from '../words/percent.ts';
import { SIDE_WORDS } from '../words/side-words.ts';
import { situationLabel } from '../words/situation-label.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** A situation comes into the matrix from this many expected snaps a game; rarer ones stand on the call sheet. Judgment. */
const SHOWN_FROM = 0.3;
/** A share that is drawn in the darkest tint; judgment: few calls go beyond. */
const DARKEST = 0.6;

/** One call as a column of the matrix. */
export interface MixColumn {
  readonly name: string;
  readonly side: string;
  /** The share of a situation's snaps on which it is called, 0 to 1. */
  readonly shareOf: (situation: string) => number;
}

/**
 * The mix a man reads across the room: situations down, base and pressures across, the share of snaps in each cell; below
 * them the calls that fit near their goal line.
 */
export function mixMatrix(plan: WeekPlan, menu: Menu): Html {
  const columns = mixColumns(plan, menu);
  const heads = columns.map(
    ({ name, side }) =>
      html`<th scope="col"><bdi>${name}</bdi><span class="side">${side === '' ? '' : `▸ ${side}`}</span></th>`,
  );
  const rows = menu.situations
    .filter(({ expectedSnaps }) => expectedSnaps >= SHOWN_FROM)
    .map(({ id }) => matrixRow(situationLabel(id), columns, id));
  const zones = scoringZoneRows(plan).map(
    ({ label, words }) =>
      html`<tr class="zone"><th scope="row">${label}</th><td colspan="${columns.length}">${words}</td></tr>\n`,
  );
  return html`<table class="mix" id="mix"><caption class="said">What to call by situation, share of snaps</caption>
<thead><tr><th scope="col" class="where">Share of snaps</th>${heads}</tr></thead><tbody>${rows}${zones}</tbody></table>\n`;
}

/** Base first, then the pressures as the menu has them, most called first. */
export function mixColumns(plan: WeekPlan, menu: Menu): readonly MixColumn[] {
  const calls = menu.calls.filter(({ family }) => family !== 'base');
  return [
    { name: 'Base', side: '', shareOf: (id) => baseShareOf(menu, id) },
    ...calls.map((call) => ({
      name: call.call,
      side: sideOf(plan, call.call),
      shareOf: (id: string) => mixShare(call, id),
    })),
  ];
}

/** The share of a situation's snaps left to the four-man base, named or not. */
export function baseShareOf(menu: Menu, situation: string): number {
  const named = menu.calls.filter(({ family }) => family === 'base');
  return unnamedBase(menu, situation) + named.reduce((sum, call: MenuCall) => sum + mixShare(call, situation), 0);
}

/** The side a call of the library is sent to, in words; empty when the library does not know it. */
export function sideOf(plan: WeekPlan, name: string): string {
  const call = plan.library?.calls.find((entry) => entry.name === name);
  return call === undefined ? '' : SIDE_WORDS[call.sent_from];
}

function matrixRow(label: string, columns: readonly MixColumn[], situation: string): Html {
  const shares = columns.map(({ shareOf }) => shareOf(situation));
  const most = percent(Math.max(...shares.slice(1)));
  const cells = columns.map(({ name }, i) =>
    mixCell(name, shares[i] as number, i > 0 && percent(shares[i] as number) === most),
  );
  return html`<tr><th scope="row">${label}</th>${cells}</tr>\n`;
}

function mixCell(name: string, share: number, isMost: boolean): Html {
  if (share < 0.005) return html`<td></td>`;
  const most = isMost ? trusted(' most') : null;
  return html`<td class="${tintClass(share / DARKEST)}${most}" data-label="${name}">${percent(share)}</td>`;
}
