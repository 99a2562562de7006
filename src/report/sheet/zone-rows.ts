import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { isCarried } from '../view/carried-calls.ts';
import { listed } from '../words/number-words.ts';
import { shareWords } from '../words/share-words.ts';

/** A row of the call sheet that is not cut by down and distance. */
export interface ZoneRow {
  readonly label: string;
  readonly words: string;
  /** What they do there, counted on film. */
  readonly fact: string;
}

const ZONES = [
  { id: 'backed_up', label: 'Backed up' },
  { id: 'open_field', label: 'Open field' },
  { id: 'red_zone', label: 'Red zone' },
  { id: 'goal_line', label: 'Goal line' },
] as const;

/** The field zones and two minute: call by down, less what points rule out there. */
export function zoneRows(plan: WeekPlan): readonly ZoneRow[] {
  return [
    ...ZONES.map(({ id, label }) => ({ label, words: zoneWords(plan, id), fact: zoneFact(plan, id) })),
    TWO_MINUTE,
  ];
}

/** Common practice, no source. */
const TWO_MINUTE: ZoneRow = {
  fact: '',

  label: 'Two minute',
  words: 'Rows of 2nd and long, 3rd and long. Keep the clock running: tackle in bounds.',
};

function zoneWords(plan: WeekPlan, zone: string): string {
  const ruledOut = new Set(
    plan.scores.zones
      .filter(
        ({ situation, family, ruledOutBy, verdict }) =>
          situation === zone && family !== 'base' && (ruledOutBy !== null || verdict === 'behind base'),
      )
      .map(({ family }) => family),
  );
  const out = (plan.library?.calls ?? []).filter(
    (call) => ruledOut.has(call.family) && isCarried(plan)(call.name) && call.family !== 'base',
  );
  if (out.length === 0) return 'By down and distance.';
  return `By down and distance, without ${listed(out.map(({ name }) => name))}.`;
}

function zoneFact({ tables }: WeekPlan, zone: string): string {
  const row = tables.tables.find(({ by }) => by === 'field_zone')?.rows.find(({ value }) => value === zone);
  return row === undefined || row.runs.film.trials === 0 ? '' : `Run ${shareWords(row.runs.film)}`;
}
