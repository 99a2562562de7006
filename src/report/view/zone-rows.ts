import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { TableZone, ZoneCall, ZoneCalls } from '../../pressure/zone/zone-result.ts';
import { capital } from '../words/label.ts';
import { counted, listed } from '../words/number-words.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { SIDE_WORDS } from '../words/side-words.ts';

/** A row of the call sheet or of the first screen that is not cut by down and distance. */
export interface ZoneRow {
  readonly zone: TableZone | 'two_minute';
  readonly label: string;
  readonly words: string;
  /** What they do there, counted on film. */
  readonly fact: string;
}

const ZONES: readonly { readonly id: TableZone; readonly label: string }[] = [
  { id: 'backed_up', label: 'Backed up' },
  { id: 'open_field', label: 'Open field' },
  { id: 'red_zone', label: 'Red zone' },
  { id: 'goal_line', label: 'Goal line' },
];

/** The field zones and two minute: which of the carried calls fit there, the side to send them from, what to leave out. */
export function zoneRows(plan: WeekPlan): readonly ZoneRow[] {
  return [
    ...ZONES.map(({ id, label }) => ({ zone: id, label, words: zoneWords(plan, id), fact: zoneFact(plan, id) })),
    { zone: 'two_minute', label: 'Two minute', words: twoMinuteWords(plan), fact: '' },
  ];
}

/** The zones near their goal line in which calls are chosen from film of them there. */
export function scoringZoneRows(plan: WeekPlan): readonly ZoneRow[] {
  return zoneRows(plan).filter(({ zone }) => (zone === 'red_zone' || zone === 'goal_line') && isOnFilm(plan, zone));
}

function isOnFilm({ zones }: WeekPlan, zone: TableZone): boolean {
  return zones.some((found) => found.zone === zone && found.calls.length > 0);
}

/** Calls named as the best of a zone. */
const BEST_NAMED = 3;

function zoneWords(plan: WeekPlan, zone: TableZone): string {
  if (zone === 'open_field') return 'The rows above.';
  const found = plan.zones.find((entry) => entry.zone === zone);
  if (found === undefined || !isOnFilm(plan, zone)) return 'No film of them there: call by down and distance.';
  const lean = isThin({ trials: found.snaps }) ? `A lean (${counted(found.snaps, 'snap', 'snaps')}): ` : '';
  const best = found.calls.filter(({ does }) => does === 'best').slice(0, BEST_NAMED);
  const first =
    best.length === 0 ? 'base; no pressure fits there' : listed(best.map((call) => withSide(plan, call.call)));
  return capital(`${lean}${first}.${outWords(found)}`);
}

function outWords({ calls }: ZoneCalls): string {
  const out = calls.filter(({ does }: ZoneCall) => does === 'out').map(({ call }) => call);
  return out.length === 0 ? '' : ` Leave out ${listed(out)}.`;
}

function withSide({ library }: WeekPlan, name: string): string {
  const sent = library?.calls.find((call) => call.name === name)?.sent_from;
  return sent === undefined ? name : `${name} ▸ ${SIDE_WORDS[sent]}`;
}

/** The rows two minute is played from. Common practice, no source. */
const TWO_MINUTE_ROWS = ['second_long', 'third_long'];

/** The calls of the long-yardage rows; what else changes is common practice, no source. */
function twoMinuteWords(plan: WeekPlan): string {
  const { menu } = plan;
  const calls = menu?.kind === 'menu' ? menu.calls.filter(({ family }) => family !== 'base') : [];
  const most = TWO_MINUTE_ROWS.flatMap((id) => {
    const shares = calls.map(({ call, mix }) => ({
      call,
      share: mix.find(({ situation }) => situation === id)?.share ?? 0,
    }));
    const [first] = shares.filter(({ share }) => share > 0).sort((a, b) => b.share - a.share);
    return first === undefined ? [] : [first.call];
  });
  const named = [...new Set(most)].map((call) => withSide(plan, call));
  const which = named.length === 0 ? '' : `${listed(named)}: `;
  return `${which}${which === '' ? 'Rows' : 'rows'} of 2nd and long, 3rd and long. Tackle in bounds.`;
}

function zoneFact({ tables }: WeekPlan, zone: TableZone): string {
  const row = tables.tables.find(({ by }) => by === 'field_zone')?.rows.find(({ value }) => value === zone);
  return row === undefined || row.runs.film.trials === 0 ? '' : `Run ${shareWords(row.runs.film)}`;
}
