// Bundles the desk into one file: the page's own script, and beside it, deflated, the engine that runs in a worker, the
// solver, the report's script and the invented demo season.
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { build } from 'esbuild';

const common = { bundle: true, minify: true, platform: 'browser', target: 'es2022', logLevel: 'warning', write: false };

/** What the solver's package asks for on Node alone. */
const external = ['node:module'];
/** Its own address, which a worker made from the page has none of; the solver is handed its file and asks for nothing. */
const define = { 'import.meta.url': '"file:///engine.js"' };

/**
 * Writes the desk into a folder.
 *
 * @param pageScript - the report's script, as it stands in the pages
 * @returns what was bundled, for the licenses
 */
export async function buildDesk(outdir, pageScript) {
  const page = await bundled({ entryPoints: ['src/desk/main.tsx'], format: 'iife' });
  const engine = await bundled({ entryPoints: ['src/desk/engine/worker.ts'], format: 'esm', external, define });
  const { deskPage } = await imported('src/desk/page/desk-page.ts');
  const solver = await readFile('node_modules/highs/build/highs.wasm');
  const text = deskPage({
    script: page.text,
    pageScript,
    packed: {
      engine: packed(classic(engine.text)),
      solver: packed(solver),
      demo: packed(JSON.stringify(await demoSeason())),
      'page-script': packed(pageScript),
    },
    policyOf,
  });
  await writeFile(join(outdir, 'desk.html'), text);
  return [page.metafile, engine.metafile];
}

async function bundled(options) {
  const result = await build({ ...common, metafile: true, ...options });
  return { text: result.outputFiles[0].text, metafile: result.metafile };
}

async function imported(entry) {
  const { text } = await bundled({ entryPoints: [entry], format: 'esm' });
  return import(`data:text/javascript;base64,${Buffer.from(text).toString('base64')}`);
}

/** A page opened from disk may start no module as a worker; nothing is imported or exported any more, but awaited. */
const classic = (text) => `(async () => {${text}})();`;

const packed = (content) => deflateRawSync(content, { level: 9 }).toString('base64');

/** What the page may do: its own scripts by their hashes, a worker and the solver's file made by itself, and nothing from anywhere. */
function policyOf(scripts) {
  const hashes = scripts
    .filter(Boolean)
    .map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`);
  const sources = [
    `default-src 'none'`,
    `script-src ${hashes.join(' ')} 'wasm-unsafe-eval'`,
    `style-src 'unsafe-inline'`,
    'img-src data:',
    'worker-src blob:',
    'connect-src blob:',
    `base-uri 'none'`,
    `form-action 'none'`,
  ];
  return sources.join('; ');
}

async function demoSeason() {
  const root = 'data/demo/season';
  const names = (await readdir(root, { recursive: true })).map((name) => name.replaceAll('\\', '/')).sort();
  const wanted = names.filter((name) => /\.(csv|yaml)$/.test(name) && !/(^|\/)out\//.test(name));
  const files = wanted.map(async (name) => [name, await readFile(join(root, name), 'utf8')]);
  return Object.fromEntries(await Promise.all(files));
}
