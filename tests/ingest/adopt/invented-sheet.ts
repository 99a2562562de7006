/** One invented snap, as a coach might chart it; every school and word is made up. */
export interface InventedSnap {
  readonly game: string;
  readonly quarter: number;
  readonly clock: string;
  readonly down: number;
  readonly toGo: number;
  /** Yards to the goal line. */
  readonly yards: number;
  readonly hash: 'L' | 'M' | 'R';
  readonly personnel: string;
  readonly formation: string;
  readonly kind: 'R' | 'P';
  readonly concept: string;
  readonly rushers: number;
  /** Blank on runs and sacks. */
  readonly time: string;
  readonly gain: number;
  readonly result: string;
}

const FORMATIONS = ['Anvil', 'Table', 'Kettle', 'Ladder'];
const RUNS = ['plow', 'sickle', 'rake'];
const PASSES = ['kite', 'sail', 'arrow', 'slip'];

/** Some games of invented snaps, the same for the same seed; series of downs follow from their gains. */
export function inventSnaps({ games = 2, snaps = 60, seed = 7 } = {}): InventedSnap[] {
  const draw = createDraw(seed);
  return Array.from({ length: games }, (_, g) => inventGame(`Harrow Creek ${g + 1}`, snaps, draw)).flat();
}

function inventGame(game: string, snaps: number, draw: Draw): InventedSnap[] {
  const rows: InventedSnap[] = [];
  let place: Place = { down: 1, toGo: 10, yards: 65 };
  for (let i = 0; i < snaps; i++) {
    const kind = draw(2) === 0 ? 'R' : 'P';
    const play = kind === 'R' ? inventRun(draw) : inventPass(draw);
    const gain = Math.max(-8, Math.min(play.gain, place.yards));
    rows.push({ game, ...place, ...timeOf(i, snaps), ...inventLook(draw), kind, ...play, gain });
    place = nextPlace(place, gain, draw);
  }
  return rows;
}

type Place = Pick<InventedSnap, 'down' | 'toGo' | 'yards'>;

function timeOf(i: number, snaps: number): Pick<InventedSnap, 'quarter' | 'clock'> {
  const second = Math.floor((i / snaps) * 4 * 720);
  const left = 719 - (second % 720);
  const clock = `${Math.floor(left / 60)}:${String(left % 60).padStart(2, '0')}`;
  return { quarter: 1 + Math.floor(second / 720), clock };
}

function inventLook(draw: Draw): Pick<InventedSnap, 'hash' | 'personnel' | 'formation'> {
  return {
    hash: (['L', 'M', 'R'] as const)[draw(3)] ?? 'M',
    personnel: ['11', '11', '11', '12', '21', '10', '20'][draw(7)] ?? '11',
    formation: FORMATIONS[draw(4)] ?? 'Anvil',
  };
}

function nextPlace({ down, toGo, yards }: Place, gain: number, draw: Draw): Place {
  const done = gain >= yards || down === 4;
  const next = done ? 40 + draw(45) : yards - gain;
  const first = done || gain >= toGo;
  return { down: first ? 1 : down + 1, toGo: first ? Math.min(10, next) : toGo - gain, yards: next };
}

type Draw = (sides: number) => number;
type Play = Pick<InventedSnap, 'concept' | 'gain' | 'result' | 'rushers' | 'time'>;

function inventRun(draw: Draw): Play {
  return {
    concept: RUNS[draw(3)] ?? 'plow',
    gain: draw(11) - 2,
    result: 'Run',
    rushers: 4 + (draw(5) === 0 ? 1 : 0),
    time: '',
  };
}

function inventPass(draw: Draw): Play {
  const concept = PASSES[draw(4)] ?? 'kite';
  const rushers = [4, 4, 4, 5, 5, 3, 6][draw(7)] ?? 4;
  const ended = draw(10);
  if (ended === 0) return { concept, rushers, gain: -3 - draw(5), result: 'Sack', time: '' };
  const time = (1.4 + draw(22) / 10).toFixed(1);
  if (ended < 4) return { concept, rushers, gain: 0, result: 'Inc', time };
  return { concept, rushers, gain: draw(22) - 1, result: 'Comp', time };
}

/** A linear congruential generator (constants of Numerical Recipes, from memory). */
function createDraw(seed: number): Draw {
  let state = seed >>> 0;
  return (sides) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * sides);
  };
}

/** A column of an invented sheet: its header, and what it says of a snap. */
export type InventedColumn = readonly [header: string, cell: (snap: InventedSnap, index: number) => string | number];

/** The columns a coach of our invention charts, under headers of his own. */
export const INVENTED_COLUMNS: readonly InventedColumn[] = [
  ['Opp game', ({ game }) => game],
  ['Qtr', ({ quarter }) => quarter],
  ['Time left', ({ clock }) => clock],
  ['Dn', ({ down }) => down],
  ['Dist', ({ toGo }) => toGo],
  ['Spot', ({ yards }) => (yards > 50 ? -(100 - yards) : yards)],
  ['Hash mark', ({ hash }) => hash],
  ['Pers', ({ personnel }) => personnel],
  ['Form', ({ formation }) => formation],
  ['R/P', ({ kind }) => kind],
  ['Play name', ({ concept }) => concept],
  ['Rush men', ({ rushers, kind }) => (kind === 'P' ? rushers : '')],
  ['Ball out', ({ time }) => time],
  ['Yds', ({ gain }) => gain],
  ['Outcome', ({ result }) => result],
];

/** The snaps as text, a header and a row each. */
export function sheetOf(snaps: readonly InventedSnap[], columns = INVENTED_COLUMNS, delimiter = ','): string {
  const rows = snaps.map((snap, i) => columns.map(([, cell]) => String(cell(snap, i))).join(delimiter));
  return `${[columns.map(([header]) => header).join(delimiter), ...rows].join('\n')}\n`;
}
