/** A room may import only from the rooms named; everything else under src/ is an error. */
const room = (folder, allowed) => ({
  name: `${folder}-may-import`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: allowed },
});

const only = (name, packages, home) => ({
  name,
  severity: 'error',
  from: { path: '^src/', pathNot: home },
  to: { path: `node_modules/(${packages})/` },
});

export default {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'no-orphans', severity: 'error', from: { orphan: true, path: '^src/' }, to: {} },
    { name: 'not-to-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
    room('stats', ['^src/stats/']),
    room('game', ['^src/game/', '^src/stats/']),
    room('ingest', ['^src/ingest/', '^src/game/']),
    room('pressure', ['^src/pressure/', '^src/stats/', '^src/game/']),
    room('report', ['^src/report/', '^src/pressure/', '^src/stats/', '^src/game/']),
    room('season', ['^src/season/', '^src/report/', '^src/pressure/', '^src/ingest/', '^src/stats/', '^src/game/']),
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
