/** A room may import only from the rooms named; everything else under src/ is an error. */
const room = (folder, allowed) => ({
  name: `${folder}-may-import`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: allowed },
});

/**
 * The rooms of src/ from the ground up: a room may import from those before it and from itself, never from a later one.
 * A name that ends in `/*` is a folder's own files without its subfolders; a file is a room of its own.
 */
export const ROOMS = [
  'game',
  'stats',
  'ingest/*',
  'ingest/formation',
  'ingest/adopt',
  'pressure/snap',
  'pressure/others',
  'pressure/forecast/*',
  'pressure/forecast/counts',
  'pressure/forecast/backtest',
  'pressure/forecast/week',
  'pressure/pressured',
  'pressure/tables',
  'pressure/different',
  'pressure/soundness',
  'pressure/protection',
  'pressure/fit',
  'pressure/evidence',
  'pressure/score',
  'pressure/menu',
  'pressure/zone',
  'pressure/self-scout',
  'pressure/archive',
  'pressure/plan',
  'pressure/practice',
  'pressure/halftime',
  'pressure/review',
  'pressure/chart-comparison',
  'report/words',
  'report/page',
  'report/field',
  'report/chart',
  'report/view',
  'report/layout',
  'report/first',
  'report/chapter',
  'report/sheet',
  'report/calls',
  'report/halftime',
  'report/practice',
  'report/review',
  'report/*',
  'report/page-script',
  'season',
  'library.ts',
  'desk/store',
  'desk/engine',
  'desk/desk-state.ts',
  'desk/desk.ts',
  'desk/chart',
  'desk/view',
  'desk/app.tsx',
  'desk/main.tsx',
  'desk/page',
  'commands',
  'cli.ts',
];

/** A pattern of the paths of a room's files. */
function filesOf(name) {
  if (name.endsWith('/*')) return `^src/${name.slice(0, -1)}[^/]+$`;
  return /\.tsx?$/.test(name) ? `^src/${name.replaceAll('.', '[.]')}$` : `^src/${name}/`;
}

/** One rule a room: nothing in it imports from a later room. */
const upward = ROOMS.slice(0, -1).map((name, i) => ({
  name: `${name}-imports-no-later-room`,
  severity: 'error',
  from: { path: filesOf(name) },
  to: { path: ROOMS.slice(i + 1).map(filesOf) },
}));

const only = (name, packages, home) => ({
  name,
  severity: 'error',
  from: { path: '^src/', pathNot: home },
  to: { path: `node_modules/(${packages})/` },
});

export default {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    ...upward,
    {
      name: 'every-file-in-a-room',
      severity: 'error',
      from: { path: '^src/', pathNot: ROOMS.map(filesOf) },
      to: {},
    },
    { name: 'no-orphans', severity: 'error', from: { orphan: true, path: '^src/' }, to: {} },
    { name: 'not-to-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
    room('stats', ['^src/stats/']),
    room('game', ['^src/game/', '^src/stats/']),
    room('ingest', ['^src/ingest/', '^src/game/']),
    room('pressure', ['^src/pressure/', '^src/stats/', '^src/game/']),
    room('report', ['^src/report/', '^src/pressure/', '^src/stats/', '^src/game/']),
    room('season', ['^src/season/', '^src/report/', '^src/pressure/', '^src/ingest/', '^src/stats/', '^src/game/']),
    room('desk', ['^src/desk/', '^src/season/', '^src/report/', '^src/pressure/', '^src/ingest/', '^src/stats/', '^src/game/']),
    only('preact-in-the-desk-only', 'preact|idb|@noble/hashes', '^src/desk/'),
    { name: 'no-shell-in-the-other', severity: 'error', from: { path: '^src/(commands|cli)' }, to: { path: '^src/desk/' } },
    {
      name: 'core-does-no-io',
      severity: 'error',
      from: { path: '^src/(stats|game|ingest|pressure|report|season)/' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'nothing-imports-the-shell', severity: 'error', from: { path: '^src/(stats|game|ingest|pressure|report|season)/' }, to: { path: '^src/(commands|desk|cli)' } },
    only('papaparse-yaml-in-ingest-only', 'papaparse|yaml|js-yaml', '^src/(ingest|season|commands)/'),
    only('zod-in-game-and-ingest-only', 'zod', '^src/(game|ingest|season)/'),
    only('workbooks-in-ingest-only', 'read-excel-file', '^src/ingest/'),
    only('vega-in-report-only', 'vega[^/]*', '^src/report/'),
    only('solvers-and-special-functions-in-stats-only', 'yalps|highs|cephes|simple-statistics', '^src/stats/'),
    only('commander-in-the-shell-only', 'commander', '^src/(cli\\.ts|commands/)'),
    { name: 'no-src-to-tests', severity: 'error', from: { path: '^src/' }, to: { path: '^(tests|scripts|bench)/' } },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['types', 'import', 'node', 'default'] },
  },
};
