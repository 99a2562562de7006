import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { transform } from 'esbuild';

/** Sources that are left out of a bundle, since another one holds them: `{ name of the built file: source }`. */
export const standingApart = (sources) => ({
  name: 'standing-apart',
  setup(build) {
    const builtOf = new Map(Object.entries(sources).map(([built, source]) => [resolve(source), `./${built}.js`]));
    build.onResolve({ filter: /\.ts$/ }, ({ path, kind, resolveDir }) => {
      const built = kind === 'entry-point' ? undefined : builtOf.get(resolve(resolveDir, path));
      return built === undefined ? undefined : { path: built, external: true };
    });
  },
});

/** commander starts no program of another's for us, and what could is slow to load: it is loaded if it ever does. */
export const commanderAlone = {
  name: 'commander-alone',
  setup(build) {
    build.onResolve({ filter: /^node:child_process$/ }, ({ importer, path }) =>
      /node_modules[\\/]commander[\\/]/.test(importer) ? { path, namespace: 'late' } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: 'late' }, ({ path }) => ({
      contents: `exports.spawn = (...args) => require(${JSON.stringify(path)}).spawn(...args);`,
    }));
  },
};

/** Short names within the packages that every check or report loads: less to read before anything runs. */
export const shorterNames = {
  name: 'shorter-names',
  setup(build) {
    build.onLoad(
      { filter: /node_modules[\\/](zod|js-yaml|papaparse|vega[^\\/]*|d3-[^\\/]*)[\\/].*\.m?js$/ },
      async ({ path }) => ({
        contents: (await transform(await readFile(path, 'utf8'), { minifyIdentifiers: true, legalComments: 'none' }))
          .code,
        loader: 'js',
      }),
    );
  },
};
