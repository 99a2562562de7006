import type { ColumnName } from '../game/columns.ts';
import type { CodeColumn, FilmColumn, NumberColumn } from '../game/film.ts';
import { type PersonnelCounts, personnelCounts } from './read-shape.ts';

/** Something in one snap that cannot be (fault) or is worth a look (warning), and the column to look at. */
export interface SnapFinding {
  readonly severity: 'fault' | 'warning';
  readonly column: ColumnName;
  readonly rule: string;
}

/** What is wrong with snap `index`, or undefined. */
export type SnapCheck = (index: number) => SnapFinding | undefined;

/** Columns of a chart, finished or still growing (their arrays are looked up again on every call). */
export type SnapColumns = Readonly<Partial<Record<ColumnName, FilmColumn>>>;

/** More rushers than this are hardly ever sent; judgment: eleven less three who must cover. */
const MOST_USUAL_RUSHERS = 8;

/** Linemen who protect besides backs and tight ends. */
const LINEMEN = 5;

/** Results that only a pass can have. */
const PASS_RESULTS = ['complete', 'incomplete', 'sack', 'interception', 'throwaway'];

/**
 * The checks between columns of one snap that the given columns allow. A column that is not charted on a snap never
 * makes a finding.
 */
export function createSnapChecks(columns: SnapColumns): readonly SnapCheck[] {
  const found = [
    checkDistance(columns),
    checkGain(columns),
    checkBacksReleased(columns),
    checkProtectors(columns),
    checkBackAction(columns),
    checkTimeToThrow(columns),
    checkRushers(columns),
    checkResult(columns),
  ];
  return found.filter((check) => check !== undefined);
}

function checkDistance(columns: SnapColumns): SnapCheck | undefined {
  const toGo = numbersOf(columns, 'to_go');
  const ballOn = numbersOf(columns, 'ball_on');
  if (!toGo || !ballOn) return undefined;
  return (i) => {
    const yards = at(ballOn, i);
    return at(toGo, i) > yards ? fault('to_go', `is more than the ${yards} yards to the goal line`) : undefined;
  };
}

function checkGain(columns: SnapColumns): SnapCheck | undefined {
  const gain = numbersOf(columns, 'gain');
  const ballOn = numbersOf(columns, 'ball_on');
  if (!gain || !ballOn) return undefined;
  return (i) => {
    const yards = at(ballOn, i);
    if (at(gain, i) > yards) return fault('gain', `is more than the ${yards} yards to the goal line`);
    const behind = 100 - yards;
    return at(gain, i) < -behind ? fault('gain', `loses more than the ${behind} yards behind the ball`) : undefined;
  };
}

function checkBacksReleased(columns: SnapColumns): SnapCheck | undefined {
  const released = numbersOf(columns, 'backs_released');
  const personnel = wordsOf(columns, 'personnel');
  if (!released || !personnel) return undefined;
  const countsAt = countsReader(personnel);
  return (i) => {
    const counts = countsAt(i);
    if (counts === undefined || !(at(released, i) > counts.backs)) return undefined;
    return fault('backs_released', `is more than the ${counts.backs} backs of personnel ${wordAt(personnel, i)}`);
  };
}

function checkProtectors(columns: SnapColumns): SnapCheck | undefined {
  const protectors = numbersOf(columns, 'protectors');
  const personnel = wordsOf(columns, 'personnel');
  if (!protectors || !personnel) return undefined;
  const released = numbersOf(columns, 'backs_released');
  const countsAt = countsReader(personnel);
  return (i) => {
    const counts = countsAt(i);
    if (counts === undefined || Number.isNaN(at(protectors, i))) return undefined;
    const gone = (released ? at(released, i) : 0) || 0;
    const most = LINEMEN + counts.extraLinemen + counts.tightEnds + Math.max(0, counts.backs - gone);
    if (at(protectors, i) <= most) return undefined;
    const without = gone > 0 ? `, ${gone} of them released` : '';
    return fault('protectors', `is more than the ${most} that personnel ${wordAt(personnel, i)}${without} leaves`);
  };
}

function checkBackAction(columns: SnapColumns): SnapCheck | undefined {
  const action = wordsOf(columns, 'back_action');
  if (!action) return undefined;
  const spot = wordsOf(columns, 'back_spot');
  const countsAt = countsReader(wordsOf(columns, 'personnel'));
  return (i) => {
    if (['', 'none'].includes(wordAt(action, i))) return undefined;
    const where = wordAt(spot, i);
    if (where === 'none') return fault('back_action', 'is a job for a back, and back_spot says there is none');
    const backs = countsAt(i)?.backs;
    if (where !== '' || backs !== 0) return undefined;
    return fault('back_action', 'is a job for a back, and the personnel has none');
  };
}

function checkTimeToThrow(columns: SnapColumns): SnapCheck | undefined {
  const time = numbersOf(columns, 'time_to_throw');
  const result = wordsOf(columns, 'result');
  if (!time || !result) return undefined;
  return (i) => {
    const ended = wordAt(result, i);
    if (Number.isNaN(at(time, i)) || (ended !== 'sack' && ended !== 'scramble')) return undefined;
    return warning('time_to_throw', `is a time to the throw, and the snap ended in a ${ended}`);
  };
}

function checkRushers(columns: SnapColumns): SnapCheck | undefined {
  const rushers = numbersOf(columns, 'rushers_faced');
  if (!rushers) return undefined;
  return (i) => {
    const count = at(rushers, i);
    if (count > MOST_USUAL_RUSHERS) return warning('rushers_faced', 'is more than eight; a typing error?');
    return count === 0 ? warning('rushers_faced', 'means that nobody rushed; a typing error?') : undefined;
  };
}

function checkResult(columns: SnapColumns): SnapCheck | undefined {
  const kind = wordsOf(columns, 'play_kind');
  const result = wordsOf(columns, 'result');
  if (!kind || !result) return undefined;
  return (i) => {
    const played = wordAt(kind, i);
    const ran = played === 'run' || played === 'quarterback_run';
    if (!ran || !PASS_RESULTS.includes(wordAt(result, i))) return undefined;
    return warning('result', `is how a pass ends, and play_kind is ${played}`);
  };
}

/** The counts of a snap's personnel, worked out once for each code. */
function countsReader(personnel: CodeColumn | undefined): (index: number) => PersonnelCounts | undefined {
  const known: (PersonnelCounts | undefined)[] = [undefined];
  return (i) => {
    const code = personnel?.codes[i] ?? 0;
    for (let next = known.length; next <= code; next++) known.push(personnelCounts(personnel?.values[next] ?? ''));
    return known[code];
  };
}

function fault(column: ColumnName, rule: string): SnapFinding {
  return { severity: 'fault', column, rule };
}

function warning(column: ColumnName, rule: string): SnapFinding {
  return { severity: 'warning', column, rule };
}

function numbersOf(columns: SnapColumns, name: ColumnName): NumberColumn | undefined {
  const column = columns[name];
  return column?.kind === 'number' ? column : undefined;
}

function wordsOf(columns: SnapColumns, name: ColumnName): CodeColumn | undefined {
  const column = columns[name];
  return column?.kind === 'code' ? column : undefined;
}

/** NaN where it was not charted, which no comparison holds for. */
function at(column: NumberColumn, index: number): number {
  return column.numbers[index] ?? Number.NaN;
}

function wordAt(column: CodeColumn | undefined, index: number): string {
  return column?.values[column.codes[index] as number] ?? '';
}
