import { type Database, draftsOfSeason, filesOfSeason, type KnownSeason } from './database.ts';

/** The seasons the desk knows, with one more. */
export async function remember(database: Database, known: KnownSeason): Promise<readonly KnownSeason[]> {
  await database.put('seasons', known);
  return database.getAll('seasons');
}

/** The seasons the desk knows without one; files and drafts of a season in the browser's own storage go with it. */
export async function forget(database: Database, known: KnownSeason): Promise<readonly KnownSeason[]> {
  if (known.where === 'browser') {
    await database.delete('files', filesOfSeason(known.id));
    await database.delete('drafts', draftsOfSeason(known.id));
  }
  await database.delete('seasons', known.id);
  return database.getAll('seasons');
}

/** A season for the browser's own storage; another of the same name has a number behind it. */
export async function unknownYet(database: Database, name: string): Promise<KnownSeason> {
  const taken = new Set(await database.getAllKeys('seasons'));
  let free = name;
  for (let more = 2; taken.has(`browser ${free}`); more++) free = `${name} ${more}`;
  return { id: `browser ${free}`, name: free, where: 'browser' };
}
