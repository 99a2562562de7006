import { nearestWord, slipsBetween } from '../ingest/nearest-word.ts';
import type { FolderEntry } from './store.ts';

/** The folders of a season that are read. */
export type ReadPlace = 'week' | 'season' | 'archive';

/** Settings read in each folder, without their ending, which is .yaml. */
const SETTINGS: Readonly<Record<ReadPlace, readonly string[]>> = {
  week: ['week', 'profile', 'formations'],
  season: ['defense', 'profile', 'formations', 'ours-profile'],
  archive: ['profile'],
};

/** What the names of the sheets read in each folder begin with; in the archive every sheet is read. */
const SHEETS: Readonly<Record<ReadPlace, readonly string[]>> = {
  week: ['opponent', 'live', 'game', 'ours'],
  season: ['ours'],
  archive: [''],
};

const PLACES: Readonly<Record<ReadPlace, string>> = {
  week: 'a week folder',
  season: 'the season folder',
  archive: 'the archive folder',
};

/**
 * Why an entry that looks like one of our files is not read, and what to do; null when it is read, or is obviously
 * something else: other kinds of files, hidden files, and copies that a program or a hand put aside.
 */
export function unreadWords(entry: FolderEntry, place: ReadPlace): string | null {
  const name = entry.name.toLowerCase();
  if (/^\.|^~\$|~$|\.(bak|orig|old|tmp|swp|part|crdownload|download)$/.test(name)) return null;
  if (entry.isFolder) return folderWords(name, place);
  const { stem, ending } = splitName(name);
  if (ending === 'yaml' && SETTINGS[place].includes(stem)) return null;
  if (READ_SHEET.test(ending) && SHEETS[place].some((start) => name.startsWith(start))) return null;
  if (SETTING_LIKE.test(ending)) return settingWords(stem, place) ?? sheetWords(stem, { ending, place });
  if (SHEET_LIKE.test(ending)) return sheetWords(stem, { ending, place }) ?? settingWords(stem, place);
  return null;
}

const READ_SHEET = /^(csv|tsv|txt|xlsx)$/;
const SETTING_LIKE = /^(|yaml|yml|ymal|yam|yaml\.txt|yml\.txt|json|toml)$/;
const SHEET_LIKE = /^(csv|tsv|txt|xlsx|xls|xlsm|xlsb|ods|numbers|tab|psv|dat|cvs)$/;

function splitName(name: string): { readonly stem: string; readonly ending: string } {
  const [, stem = name, ending = ''] = /^(.+?)\.(ya?ml\.txt|[^.]*)$/.exec(name) ?? [];
  return { stem: stem.trim(), ending };
}

function folderWords(name: string, place: ReadPlace): string | null {
  if (place === 'season') return seasonFolderWords(name);
  const start = place === 'week' ? knownStart(name, SHEETS.week) : undefined;
  return start === undefined ? null : 'it is a folder; put its sheets beside week.yaml';
}

function seasonFolderWords(name: string): string | null {
  if (name === 'archive') return null;
  if (/^archi/.test(name) || nearestWord(name, ['archive'])) return 'call it archive if it holds other offenses';
  const week = /^w[a-z]{0,4}[-_ ]?(\d{1,2})$/.exec(name)?.[1];
  return week === undefined || name.startsWith('week') ? null : `call it week-${week.padStart(2, '0')} if it is a week`;
}

/** Settings by a name with another ending, with what tells copies apart ("week (2)", "week-09"), or misspelt. */
function settingWords(stem: string, place: ReadPlace): string | null {
  const plain = stem.replace(/[\s_-]*(\(?\d+\)?|copy|copy \d+)$/, '');
  if (SETTINGS[place].includes(plain)) return `its settings are read from ${plain}.yaml; call it that`;
  const home = (Object.keys(SETTINGS) as ReadPlace[]).find((other) => SETTINGS[other].includes(plain));
  if (home !== undefined) return `${plain}.yaml is read in ${PLACES[home]}`;
  const near = plain.length < 3 ? undefined : nearestWord(plain, SETTINGS[place]);
  return near === undefined || isFar(plain, near) ? null : `call it ${near}.yaml if that is what it is`;
}

/** Three slips of the pen turn a license into a defense. */
function isFar(written: string, near: string): boolean {
  return !near.startsWith(written) && slipsBetween(written, near) > 2;
}

interface SheetName {
  readonly ending: string;
  readonly place: ReadPlace;
}

function sheetWords(stem: string, { ending, place }: SheetName): string | null {
  if (place === 'archive') return SETTING_LIKE.test(ending) ? null : 'save it as .csv or .xlsx';
  if (/counts/.test(stem)) return `tallies of other offenses are read in ${PLACES.archive}`;
  const start = knownStart(stem, SHEETS[place]);
  if (start === undefined && place === 'season') return weekSheetWords(stem);
  if (start === undefined) return otherSheetWords(stem, ending);
  return READ_SHEET.test(ending) ? beginWith(stem, start) : `save it as ${start}….csv or .xlsx`;
}

/** Endings of sheets and of nothing else: a .txt may be anything. */
const SHEET_ENDING = /^(csv|tsv|xlsx|xls|xlsm|xlsb|ods|numbers)$/;

/** A sheet of any other name in a week: a second chart, made to be compared, is meant to lie there unread. */
function otherSheetWords(stem: string, ending: string): string | null {
  if (/^second/.test(stem) || !SHEET_ENDING.test(ending)) return null;
  return 'call it opponent….csv if it is film of them, or put it into the archive folder if it is of another offense';
}

function weekSheetWords(stem: string): string | null {
  const start = SHEETS.week.find((known) => stem.startsWith(known));
  return start === undefined ? null : `sheets named ${start}… are read in ${PLACES.week}`;
}

function beginWith(stem: string, start: string): string {
  return stem.includes(start)
    ? `the name of such a sheet begins with "${start}"`
    : `call it ${start}….csv if that is what it is`;
}

/** Our word that a name begins with, holds as a word of its own, or begins with but for a slip of the pen. */
function knownStart(stem: string, starts: readonly string[]): string | undefined {
  const own = starts.find((start) => stem.startsWith(start) || new RegExp(`(^|[^a-z])${start}([^a-z]|$)`).test(stem));
  const first = /^[a-z]+/.exec(stem)?.[0] ?? '';
  return own ?? (first.length < 3 ? undefined : nearestWord(first, starts));
}
