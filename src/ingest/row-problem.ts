/**
 * One thing wrong in a file the coach wrote, as data: where it stands, what stands there, and the rule it breaks.
 * `severity` fault: the row is kept out of the numbers; warning: the row is used, but look at it. `row` is the
 * 1-based spreadsheet row (the header is row 1), or the line of a YAML file when `unit` is `line`; 0 means the whole
 * file. `found` is the value as written, empty when the trouble is not one value. `rule` completes the sentence
 * "<found> ...", without a full stop. `suggestion` is a whole sentence, such as `Did you mean "10"?`.
 */
export interface RowProblem {
  readonly severity: 'fault' | 'warning';
  readonly file: string;
  readonly row: number;
  readonly columnLetter?: string;
  readonly header?: string;
  readonly found: string;
  readonly rule: string;
  readonly suggestion?: string;
  readonly unit?: 'row' | 'line';
}

/** Equal problems as one: the first of them, how many there are, and the first few rows (or lines) they stand on. */
export interface ProblemGroup {
  readonly problem: RowProblem;
  readonly count: number;
  readonly rows: readonly number[];
}

/** The groups shown, and how many further groups and problems the cap left out. */
export interface GroupedProblems {
  readonly groups: readonly ProblemGroup[];
  readonly restGroups: number;
  readonly restProblems: number;
}

/** How many rows a group names; judgment: as many as fit on one line. */
const ROWS_NAMED = 5;

/** How much of a value is shown before it is cut; judgment. */
const FOUND_SHOWN = 60;

/**
 * Problems that say the same of the same value in the same column as one group with a count, faults before warnings,
 * otherwise in order of appearance; at most `cap` groups, with the count of the rest.
 */
export function groupProblems(problems: readonly RowProblem[], cap: number): GroupedProblems {
  const groups = collectGroups(problems);
  const ordered = [
    ...groups.filter(({ problem }) => problem.severity === 'fault'),
    ...groups.filter(({ problem }) => problem.severity === 'warning'),
  ];
  const rest = ordered.slice(cap);
  const restProblems = rest.reduce((sum, group) => sum + group.count, 0);
  return { groups: ordered.slice(0, cap), restGroups: rest.length, restProblems };
}

/**
 * The problem as one line for the coach.
 *
 * @example `plays.csv, row 14, column F ("to_go"): "1O" is not a whole number of yards. Did you mean "10"?`
 */
export function describeProblem(problem: RowProblem): string {
  return seen(`${placeOf(problem)}: ${sentenceOf(problem)}`);
}

/** The problem without its file and row, as the reason a row was rejected. */
export function describeReason(problem: RowProblem): string {
  const place = columnPlace(problem.columnLetter, problem.header);
  return seen(`${place === '' ? '' : `${place}: `}${sentenceOf(problem)}`);
}

/** The group as one line: the first problem, and the rows it stands on when there are several. */
export function describeGroup(group: ProblemGroup): string {
  const { problem, count, rows } = group;
  if (count === 1) return describeProblem(problem);
  const unit = problem.unit ?? 'row';
  const more = count > rows.length ? ` and ${count - rows.length} more` : '';
  const { file, columnLetter, header } = problem;
  const place = [file, `${count} ${unit}s (${rows.join(', ')}${more})`, columnPlace(columnLetter, header)];
  return seen(`${place.filter(Boolean).join(', ')}: ${sentenceOf(problem)}`);
}

/** One line for each of at most `cap` groups, then how many problems are left. */
export function describeProblems(problems: readonly RowProblem[], cap: number): readonly string[] {
  const { groups, restProblems } = groupProblems(problems, cap);
  return [...groups.map(describeGroup), ...(restProblems > 0 ? [`… and ${restProblems} more`] : [])];
}

interface GrowingGroup extends ProblemGroup {
  count: number;
  readonly rows: number[];
}

function collectGroups(problems: readonly RowProblem[]): ProblemGroup[] {
  const groups: GrowingGroup[] = [];
  const groupOf = oncePerKind((problem) => {
    const group: GrowingGroup = { problem, count: 0, rows: [] };
    groups.push(group);
    return group;
  });
  for (const problem of problems) {
    const group = groupOf(problem);
    group.count++;
    if (group.rows.length < ROWS_NAMED) group.rows.push(problem.row);
  }
  return groups;
}

/**
 * What `work` makes of a problem, made once for all problems that say the same of the same value in the same column,
 * in whatever rows; there may be a million of them.
 */
export function oncePerKind<Result>(work: (problem: RowProblem) => Result): (problem: RowProblem) => Result {
  type Made = { readonly problem: RowProblem; readonly result: Result };
  const made = new Map<string, Map<string, Made[]>>();
  return (problem) => {
    const ofRule = entryOf(made, problem.rule, () => new Map<string, Made[]>());
    const alike = entryOf(ofRule, problem.found, (): Made[] => []);
    const known = alike.find((one) => isSame(one.problem, problem));
    if (known !== undefined) return known.result;
    const result = work(problem);
    alike.push({ problem, result });
    return result;
  };
}

/** What the map holds under a key, put there first when nothing does. */
function entryOf<Value>(map: Map<string, Value>, key: string, create: () => Value): Value {
  const there = map.get(key);
  if (there !== undefined) return there;
  const created = create();
  map.set(key, created);
  return created;
}

/** Whether two problems say the same of the same value. */
function isSame(one: RowProblem, other: RowProblem): boolean {
  return SAID.every((key) => one[key] === other[key]);
}

const SAID = ['severity', 'file', 'columnLetter', 'header', 'found', 'rule', 'suggestion'] as const;

function placeOf({ file, row, columnLetter, header, unit }: RowProblem): string {
  const rowPlace = row === 0 ? '' : `${unit ?? 'row'} ${row}`;
  return [file, rowPlace, columnPlace(columnLetter, header)].filter(Boolean).join(', ');
}

function columnPlace(columnLetter?: string, header?: string): string {
  if (columnLetter === undefined) return header === undefined ? '' : quoted(header);
  return header === undefined ? `column ${columnLetter}` : `column ${columnLetter} (${quoted(header)})`;
}

function sentenceOf({ found, rule, suggestion }: RowProblem): string {
  const said = found === '' ? rule : `${quoted(found)} ${rule}`;
  const closed = said.endsWith('?') ? said : `${said}.`;
  return suggestion === undefined ? closed : `${closed} ${suggestion}`;
}

/** In quotation marks, cut when long. */
function quoted(value: string): string {
  return `"${value.length > FOUND_SHOWN ? `${value.slice(0, FOUND_SHOWN)}...` : value}"`;
}

/** With characters that cannot be seen, or would move the cursor, written out; what stands in a file may be anywhere. */
function seen(line: string): string {
  return line.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (character) => {
    const point = character.codePointAt(0) ?? 0;
    return `\\u${point.toString(16).padStart(4, '0')}`;
  });
}
