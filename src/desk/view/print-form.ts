import { documentText } from '../../report/page/document.ts';
import { html } from '../../report/page/html.ts';
import { fieldsOf } from '../chart/chart-fields.ts';
import { type ChartState, isOffered } from '../chart/chart-state.ts';
import { printPage } from './print-page.ts';

/** Rows of a blank form: one landscape side. */
const BLANK_ROWS = 24;

const STYLE = `@page{size:letter landscape;margin:.4in}body{font:9pt/1.2 Arial,"Liberation Sans",sans-serif;color:#000;margin:0}
table{border-collapse:collapse;width:100%}th,td{border:1px solid #555;padding:2px 4px;height:.24in;text-align:left}th{font-size:7.5pt;vertical-align:bottom}
h1{font-size:13pt;margin:0 0 4pt}thead{display:table-header-group}tr{break-inside:avoid}`;

/** Prints the sheet as it is charted, or an empty form with the same columns for charting by hand. */
export async function printForm(state: ChartState, opponent: string, isFilled: boolean): Promise<void> {
  const anyPass = { ...state, passes: 'both' as const, draft: { play_kind: 'pass' } };
  const fields = fieldsOf(state.kind).filter((field) => isOffered(anyPass, field));
  const blank = Array.from({ length: BLANK_ROWS }, () => ({}) as ChartState['draft']);
  const snaps = isFilled ? state.snaps : blank;
  const body = html`<h1>${opponent}${isFilled ? `, ${state.snaps.length} snaps` : ': game ______________________ quarter ____'}</h1>
<table><thead><tr><th>#</th>${fields.map(({ label }) => html`<th>${label}</th>`)}</tr></thead>
<tbody>${snaps.map((snap, i) => html`<tr><th>${i + 1}</th>${fields.map(({ column }) => html`<td>${(snap[column] ?? '').replaceAll('_', ' ')}</td>`)}</tr>`)}</tbody></table>`;
  printPage(await documentText({ title: `Chart of ${opponent}`, style: STYLE, script: '', body }));
}
