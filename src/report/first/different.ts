import type { DifferentLine } from '../../pressure/different/different-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { IntervalAxis } from '../chart/interval-row.ts';
import { stripDrawing } from '../chart/strip.ts';
import { type Html, html, trusted } from '../page/html.ts';
import { sureWithWord } from '../page/sure-mark.ts';
import { differentWords } from '../words/different-words.ts';
import { counted } from '../words/number-words.ts';
import { isThin } from '../words/share-words.ts';
import { sureWord } from '../words/sure-words.ts';

/** What makes them different from other offenses: each line with its count, the others' ticks, and how sure. */
export function differentPart(plan: WeekPlan): Html {
  const { lines } = plan.different;
  const items = lines.slice(0, LINES_SHOWN).map((line) => differentItem(line));
  return html`<h2>What makes them different</h2>
${lines.length === 0 ? html`<p>${noneWords(plan)}</p>` : html`<ul class="different">${items}</ul>`}${moreLine(lines.length - LINES_SHOWN)}\n`;
}

function moreLine(rest: number): Html | null {
  return rest > 0
    ? html`<p class="small">${counted(rest, 'more line', 'more lines')} under <a href="#what-they-do">What they do</a></p>`
    : null;
}

/** Lines of the first screen; all of them stand under what they do. */
const LINES_SHOWN = 5;

function noneWords({ different, forecast }: WeekPlan): string {
  const { looked } = forecast.tells;
  if (different.against === 'no_archive' && looked === 0) return 'Too little is charted to look for tendencies.';
  if (different.against === 'no_archive')
    return `No other offenses to compare with (archive folder), and no tendency beyond down, distance and look (${counted(looked, 'pattern', 'patterns')} checked).`;
  return `Nothing beyond what other offenses do (${counted(different.looked, 'comparison', 'comparisons')} and ${counted(looked, 'pattern', 'patterns')} checked).`;
}

function differentItem(line: DifferentLine): Html {
  return html`<li><span>${differentWords(line)}</span>${sureWithWord(sureWord(line.sure, line.film))}${againstOthers(line)}</li>`;
}

const SHARES: IntervalAxis = { title: '', domain: [0, 1], format: 'percent', reference: null };

/** A tick for each offense of the archive, theirs as the dot with its interval; nothing without other offenses. */
function againstOthers({ film, offenses }: DifferentLine): Html | null {
  if (offenses.length === 0 || film.estimate === null) return null;
  const row = {
    id: '',
    label: '',
    note: '',
    state: isThin(film) ? 'thin' : 'solid',
    value: film.estimate,
    low: film.low,
    high: film.high,
    second: null,
    others: offenses.flatMap(({ count, trials }) => (trials === 0 ? [] : [count / trials])),
  } as const;
  return trusted(stripDrawing(row, SHARES));
}
