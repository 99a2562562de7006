import type { ColumnName } from '../../../src/game/columns.ts';
import { type InventedSnap, inventSnaps } from './invented-sheet.ts';

/** An invented snap with what only some sheets say: its number, the week, the day, and both scores. */
export interface CoachSnap extends InventedSnap {
  readonly i: number;
  readonly week: number;
  readonly day: string;
  readonly us: number;
  readonly them: number;
}

/** A column of a coach's sheet: its header, ours that it says (alone or with others), and its cell. */
type CoachColumn = readonly [header: string, ours: readonly ColumnName[], cell: (snap: CoachSnap) => string | number];

/** An invented sheet as a high-school staff might keep it, and what its columns truly hold. */
export interface CoachSheet {
  readonly name: string;
  readonly text: string;
  readonly snaps: readonly CoachSnap[];
  readonly ours: readonly ColumnName[];
  readonly answers: Readonly<Record<string, string>>;
}

interface SheetParts {
  readonly snaps: readonly CoachSnap[];
  readonly columns: readonly CoachColumn[];
  readonly delimiter?: string;
  readonly answers?: Readonly<Record<string, string>>;
}

/** Invented games in which the offense scores where it reaches the goal line and the defense after some fourth downs. */
export function coachSnaps(seed: number, snaps: number, games = 1): CoachSnap[] {
  const score = { us: 0, them: 0, fourths: 0, game: '', week: 0 };
  return inventSnaps({ seed, snaps, games }).map((snap, i) => {
    if (snap.game !== score.game) Object.assign(score, { us: 0, them: 0, game: snap.game, week: score.week + 1 });
    const { us, them, week } = score;
    if (snap.gain >= snap.yards) score.us += 7;
    else if (snap.down === 4 && score.fourths++ % 3 === 0) score.them += 7;
    return { ...snap, i, week, day: `${4 + 7 * week}/9/2026`, us, them };
  });
}

const HASHES = { L: 'left', M: 'middle', R: 'right' } as const;
const RESULTS: Readonly<Record<string, string>> = { Run: 'rush', Comp: 'complete', Inc: 'incomplete', Sack: 'sack' };

/** What a snap truly is in one of our columns; blank where it was not charted. */
export const TRUTH: Readonly<Partial<Record<ColumnName, (snap: CoachSnap) => string | number>>> = {
  game: ({ game }) => game,
  week: ({ week }) => week,
  snap: ({ i }) => i + 1,
  quarter: ({ quarter }) => quarter,
  clock: ({ clock }) => clock.split(':').reduce((seconds, part) => 60 * seconds + Number(part), 0),
  score_margin: ({ us, them }) => us - them,
  down: ({ down }) => down,
  to_go: ({ toGo }) => toGo,
  ball_on: ({ yards }) => yards,
  hash: ({ hash }) => HASHES[hash],
  personnel: ({ personnel }) => personnel,
  formation: ({ formation }) => formation,
  play_kind: ({ kind }) => (kind === 'R' ? 'run' : 'pass'),
  concept: ({ concept }) => concept,
  gain: ({ gain }) => gain,
  result: ({ result }) => RESULTS[result] ?? '',
};

function sheet(name: string, { snaps, columns, delimiter = ',', answers = {} }: SheetParts): CoachSheet {
  const rows = snaps.map((snap) => columns.map(([, , cell]) => quoted(String(cell(snap)), delimiter)).join(delimiter));
  const text = `${[columns.map(([header]) => header).join(delimiter), ...rows].join('\n')}\n`;
  return { name, text, snaps, ours: [...new Set(columns.flatMap(([, ours]) => ours))], answers };
}

const quoted = (text: string, delimiter: string) => (text.includes(delimiter) ? `"${text}"` : text);
const place = (yards: number, own: string, opp: string) =>
  yards === 50 ? '50' : yards > 50 ? `${own}${100 - yards}` : `${opp}${yards}`;
const line = ({ yards }: CoachSnap) => (yards > 50 ? 100 - yards : yards);
const ordinal = (number: number) => ['', '1st', '2nd', '3rd', '4th'][number] ?? '';
const two = (number: number) => String(number).padStart(2, '0');
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const [DOWN, TO_GO, BALL, HASH, KIND, GAIN]: readonly CoachColumn[] = [
  ['Dn', ['down'], ({ down }) => down],
  ['Dist', ['to_go'], ({ toGo }) => toGo],
  ['YdLn', ['ball_on'], ({ yards }) => place(yards, '-', '+')],
  ['Hash', ['hash'], ({ hash }) => hash],
  ['R/P', ['play_kind'], ({ kind }) => kind],
  ['Gain', ['gain'], ({ gain }) => gain],
] as const;
const SITUATION: readonly ColumnName[] = ['down', 'to_go'];
const PLAIN: readonly CoachColumn[] = [HASH, KIND, GAIN].filter((column) => column !== undefined);

/** Down and distance that a spreadsheet with days before months took for dates; a distance over 12 is no month. */
const dayFirst = (date: (snap: CoachSnap) => string) => (snap: CoachSnap) =>
  snap.toGo > 12 ? `${snap.down}-${snap.toGo}` : date(snap);

/** Sheets as different as those of high-school staffs are; every school, word and snap is invented. */
export function coachSheets(): CoachSheet[] {
  return [
    sheet('short headers, a # and signed yard lines', {
      snaps: coachSnaps(11, 70),
      columns: [
        ['#', ['snap'], ({ i }) => i + 1],
        ['Q', ['quarter'], ({ quarter }) => quarter],
        ['Dn', ['down'], ({ down }) => down],
        ['Dst', ['to_go'], ({ toGo }) => toGo],
        ['YdLn', ['ball_on'], ({ yards }) => place(yards, '-', '+')],
        ['Hsh', ['hash'], ({ hash }) => hash],
        ['Pers', ['personnel'], ({ personnel }) => personnel],
        ['Form', ['formation'], ({ formation }) => formation],
        ['R/P', ['play_kind'], ({ kind }) => kind],
        ['Play', ['concept'], ({ concept }) => concept],
        ['Gn', ['gain'], ({ gain }) => gain],
        ['Res', ['result'], ({ result }) => ({ Run: 'Rush', Comp: 'C', Inc: 'I', Sack: 'SK' })[result] ?? ''],
      ],
    }),
    sheet('lower case, words and extra spaces', {
      snaps: coachSnaps(12, 60, 2),
      columns: [
        ['  opponent game ', ['game'], ({ game }) => ` ${game} `],
        [' qtr ', ['quarter'], ({ quarter }) => ` ${ordinal(quarter)}`],
        [' time', ['clock'], ({ clock }) => clock],
        ['down ', ['down'], ({ down }) => `${ordinal(down)} `],
        ['dist', ['to_go'], ({ toGo }) => toGo],
        [' ball on ', ['ball_on'], ({ yards }) => place(yards, 'own  ', 'opp  ')],
        ['hash', ['hash'], ({ hash }) => ({ L: 'left hash', M: 'middle', R: 'right  hash' })[hash]],
        ['personnel', ['personnel'], ({ personnel }) => `${personnel}p`],
        ['run / pass', ['play_kind'], ({ kind }) => (kind === 'R' ? 'rush' : 'pass')],
        ['play', ['concept'], ({ concept }) => concept],
        ['yds gained', ['gain'], ({ gain }) => (gain === 1 ? '1 yd' : `${gain} yds`)],
        ['result', ['result'], ({ result }) => ({ Run: 'run', Comp: 'caught', Inc: 'dropped' })[result] ?? 'sacked'],
      ],
    }),
    sheet('nine columns in codes and names of its own', {
      snaps: coachSnaps(13, 45),
      columns: [
        ['D&D', SITUATION, ({ down, toGo }) => `${down}&${toGo}`],
        ['Yd', ['ball_on'], ({ yards }) => place(yards, 'O', 'D')],
        ['H', ['hash'], ({ hash }) => ({ L: 1, M: 2, R: 3 })[hash]],
        [
          'Grp',
          ['personnel'],
          ({ personnel }) => ({ '11': 'Ace', '12': 'Deuce', '21': 'Pro', '20': 'Two' })[personnel] ?? 'Spread',
        ],
        ['Set', ['formation'], ({ formation }) => formation],
        ['Type', ['play_kind'], ({ kind }) => (kind === 'R' ? 'Rush' : 'Pass')],
        ['Call', ['concept'], ({ concept }) => concept],
        ['+/-', ['gain'], ({ gain }) => (gain > 0 ? `+${gain}` : gain < 0 ? `(${-gain})` : 0)],
        ['Remarks', [], () => ''],
      ],
      answers: {
        ...{ H: 'hash', 'hash/1': 'left', 'hash/2': 'middle', 'hash/3': 'right', Call: 'concept' },
        ...{ 'personnel/Ace': '11', 'personnel/Deuce': '12', 'personnel/Pro': '21', 'personnel/Spread': '10' },
        'personnel/Two': '20',
      },
    }),
    sheet('side, minutes and seconds in columns of their own', {
      snaps: coachSnaps(14, 60, 2),
      columns: [
        ['Game', ['game'], ({ game }) => game],
        ['Qtr', ['quarter'], ({ quarter }) => quarter],
        ['Min', ['clock'], ({ clock }) => clock.split(':')[0] ?? ''],
        ['Sec', ['clock'], ({ clock }) => Number(clock.split(':')[1])],
        ['Situation', SITUATION, ({ down, toGo }) => `${ordinal(down)} and ${toGo}`],
        ['Side', ['ball_on'], ({ yards }) => (yards === 50 ? '' : yards > 50 ? 'OWN' : 'OPP')],
        ['Yd line', ['ball_on'], line],
        ...PLAIN.slice(0, 2),
        ['Gain', ['gain'], ({ gain }) => (gain < 0 ? `${gain} yds` : `+${gain}`)],
      ],
    }),
    sheet('team and yard line, and two scores that name no team', {
      snaps: coachSnaps(15, 60, 2),
      delimiter: ';',
      columns: [
        ['Game', ['game'], ({ game }) => game],
        ['Date', [], ({ day }) => day],
        ['Period', ['quarter'], ({ quarter }) => `Q${quarter}`],
        ['Clock', ['clock'], ({ clock }) => clock],
        ['HC', ['score_margin'], ({ us }) => us],
        ['PLW', ['score_margin'], ({ them }) => them],
        ...[DOWN, TO_GO].filter((column) => column !== undefined),
        ['Territory', ['ball_on'], ({ yards }) => (yards >= 50 ? 'HC' : 'PLW')],
        ['YL', ['ball_on'], line],
        ['Pers.', ['personnel'], ({ personnel }) => `${personnel} pers`],
        ...PLAIN,
      ],
      answers: { HC: 'score_margin with PLW as plus' },
    }),
    sheet('scores of offense and defense, a sign beside the yard line', {
      snaps: coachSnaps(21, 60, 2),
      columns: [
        ['Wk', ['week'], ({ week }) => week],
        ['Qtr', ['quarter'], ({ quarter }) => quarter],
        ['Off score', ['score_margin'], ({ us }) => us],
        ['Def score', ['score_margin'], ({ them }) => them],
        ...[DOWN, TO_GO].filter((column) => column !== undefined),
        ['Yd', ['ball_on'], line],
        ['+/-', ['ball_on'], ({ yards }) => (yards > 50 ? '-' : '+')],
        ...PLAIN,
      ],
    }),
    sheet('own yard lines marked, the others bare', {
      snaps: coachSnaps(20, 60),
      columns: [
        ['Dwn', ['down'], ({ down }) => down],
        ['Ydg', ['to_go'], ({ toGo }) => toGo],
        ['Where', ['ball_on'], ({ yards }) => place(yards, 'own ', '')],
        ['Grouping', ['personnel'], ({ personnel }) => `${personnel} personnel`],
        ['Fm', ['formation'], ({ formation }) => formation],
        ['P/R', ['play_kind'], ({ kind }) => kind],
        ['Gn/Ls', ['gain'], ({ gain }) => (gain < 0 ? `loss of ${-gain}` : gain === 0 ? 'no gain' : gain)],
        ['Off H', ['hash'], ({ hash }) => ({ L: 'Left', M: 'Mid', R: 'Rt' })[hash]],
      ],
    }),
    ...dateSheets(),
  ];
}

/** Sheets on which a spreadsheet took down and distance, or ball position, for dates. */
function dateSheets(): CoachSheet[] {
  const pairs: readonly (readonly [string, (snap: CoachSnap) => string])[] = [
    ['3-Oct for 3-10', ({ down, toGo }) => `${down}-${MONTHS[toGo - 1]}`],
    ['2026-10-03 for 3-10', ({ down, toGo }) => `2026-${two(toGo)}-${two(down)}`],
    ['03/10/2026 for 3-10', ({ down, toGo }) => `${two(down)}/${two(toGo)}/2026`],
    ['10/03/2026 for 3-10', ({ down, toGo }) => `${two(toGo)}/${two(down)}/2026`],
  ];
  const ball = (date: (day: number) => string) => (snap: CoachSnap) =>
    snap.yards > 50 ? date(100 - snap.yards) : snap.yards === 50 ? '50' : `PLW ${snap.yards}`;
  const balls: readonly (readonly [string, (day: number) => string])[] = [
    ['2026-03-10 for MAR 10, 1935-03-01 for MAR 35', (day) => (day > 31 ? `19${day}-03-01` : `2026-03-${two(day)}`)],
    ['3/10/2026 for MAR 10', (day) => (day > 31 ? `MAR ${day}` : `3/${day}/2026`)],
    ['10/3/2026 for MAR 10', (day) => (day > 31 ? `MAR ${day}` : `${day}/3/2026`)],
  ];
  const rest = [DOWN, TO_GO, BALL].filter((column) => column !== undefined);
  return [
    ...pairs.map(([name, date]) =>
      sheet(name, {
        snaps: coachSnaps(17, 70),
        columns: [
          ['Qtr', ['quarter'], ({ quarter }) => quarter],
          ['DD', SITUATION, dayFirst(date)],
          ['YTG', ['ball_on'], ({ yards }) => yards],
          ...PLAIN,
        ],
      }),
    ),
    ...balls.map(([name, date]) =>
      sheet(name, {
        snaps: coachSnaps(18, 70),
        columns: [...rest.slice(0, 2), ['Spot', ['ball_on'], ball(date)], ...PLAIN],
      }),
    ),
  ];
}
