import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Licenses under which a package may be shipped inside ours when its notice comes along. */
const ALLOWED = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0'];

/** The notices of every package that esbuild put into the bundles, by their metafiles; throws on a license we do not know. */
export async function thirdPartyLicenses(...metafiles) {
  const outputs = metafiles.flatMap((metafile) => Object.values(metafile.outputs));
  const names = new Set(outputs.flatMap(({ inputs }) => Object.keys(inputs).map(packageOf)));
  names.delete(undefined);
  const notices = await Promise.all([...names].sort().map(noticeOf));
  const head = `Pressure Plan contains ${notices.length} packages of others, each under the license that follows its name.`;
  return `${[head, ...notices].join(`\n\n${'-'.repeat(80)}\n\n`)}\n`;
}

/** The folder of the package a bundled file comes from; undefined for our own files. */
function packageOf(input) {
  return input.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0];
}

async function noticeOf(folder) {
  const {
    name,
    version,
    license,
    author,
    contributors = [],
  } = JSON.parse(await readFile(join(folder, 'package.json')));
  if (!ALLOWED.includes(license)) throw new Error(`${name} ${version} is under ${license}, which is not on our list`);
  const files = (await readdir(folder)).filter((file) => /^(licen[cs]e|notice)/i.test(file)).sort();
  const texts = await Promise.all(files.map((file) => readFile(join(folder, file), 'utf8')));
  const people = [author, ...contributors].flatMap((person) => person?.name ?? person ?? []);
  const rest =
    texts.length > 0 ? texts : [`Copyright of its authors${people.length > 0 ? `: ${people.join(', ')}` : ''}.`];
  return [`${name} ${version} (${license})`, ...rest.map((text) => text.trim())].join('\n\n');
}
