import { seasonFiles } from '../../season/new-season.ts';
import { bytesOf } from '../store/same-bytes.ts';
import type { ComingSeason } from '../store/season-files.ts';
import { unpackText } from './packed.ts';

/** The demo's season by its name; every page of it says that it is invented. */
const DEMO_NAME = 'invented demo';

/** What a new season begins with. */
export interface NewSeason {
  readonly name: string;
  readonly opponent: string;
}

/** The invented demo season that is packed into the page. */
export function demoSeason(): ComingSeason {
  const files = JSON.parse(unpackText('demo')) as Readonly<Record<string, string>>;
  return { name: DEMO_NAME, files: new Map(Object.entries(files).map(([path, text]) => [path, bytesOf(text)])) };
}

/** A new season with its first week. */
export function firstFiles({ name, opponent }: NewSeason): ComingSeason {
  const files = seasonFiles({ week: 'week-01', opponent });
  return { name, files: new Map(files.map(({ name: path, text }) => [path, bytesOf(text ?? '')])) };
}
