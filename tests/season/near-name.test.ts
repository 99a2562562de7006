import { describe, expect, it } from 'vitest';
import { type ReadPlace, unreadWords } from '../../src/season/near-name.ts';

const file = (name: string, place: ReadPlace) => unreadWords({ name, isFolder: false }, place);
const folder = (name: string, place: ReadPlace) => unreadWords({ name, isFolder: true }, place);

describe('a name that is read', () => {
  it.each<[string, ReadPlace]>([
    ['week.yaml', 'week'],
    ['Week.YAML', 'week'],
    ['profile.yaml', 'week'],
    ['formations.yaml', 'season'],
    ['opponent.csv', 'week'],
    ['Opponent 2.CSV', 'week'],
    ['opponent-latest.tsv', 'week'],
    ['opponent.csv.txt', 'week'],
    ['live2.txt', 'week'],
    ['game.xlsx', 'week'],
    ['ours.csv', 'week'],
    ['ours-2025.csv', 'season'],
    ['defense.yaml', 'season'],
    ['ours-profile.yaml', 'season'],
    ['anything at all.csv', 'archive'],
    ['league-counts.csv', 'archive'],
    ['profile.yaml', 'archive'],
  ])('%s in the %s is not named', (name, place) => expect(file(name, place)).toBeNull());
});

describe('a name that is close to one that is read', () => {
  it.each<[string, ReadPlace, RegExp]>([
    ['week.yml', 'week', /read from week\.yaml; call it that/],
    ['week.yaml.txt', 'week', /week\.yaml/],
    ['week.txt', 'week', /week\.yaml/],
    ['week', 'week', /week\.yaml/],
    ['week.json', 'week', /week\.yaml/],
    ['week (2).yaml', 'week', /week\.yaml/],
    ['week-09.yaml', 'week', /week\.yaml/],
    ['weak.yaml', 'week', /call it week\.yaml if/],
    ['week.yaml', 'season', /week\.yaml is read in a week folder/],
    ['defense.yml', 'season', /defense\.yaml; call it that/],
    ['defence.yaml', 'season', /call it defense\.yaml if/],
    ['defense.yaml', 'week', /defense\.yaml is read in the season folder/],
    ['formation.yaml', 'season', /call it formations\.yaml if/],
    ['ours_profile.yaml', 'season', /call it ours-profile\.yaml if/],
    ['ours-profile.yaml', 'week', /ours-profile\.yaml is read in the season folder/],
    ['profile.yml', 'archive', /profile\.yaml/],
    ['oponent.csv', 'week', /call it opponent….csv if/],
    ['opponents.xls', 'week', /save it as opponent….csv or .xlsx/],
    ['opponent', 'week', /save it as opponent….csv/],
    ['opponent.numbers', 'week', /save it as opponent….csv/],
    ['copy of opponent.csv', 'week', /begins with "opponent"/],
    ['first-game.csv', 'week', /begins with "game"/],
    ['liv.csv', 'week', /call it live….csv if/],
    ['our.csv', 'season', /call it ours….csv if/],
    ['opponent.csv', 'season', /sheets named opponent… are read in a week folder/],
    ['live.csv', 'season', /live… are read in a week folder/],
    ['counts.csv', 'week', /tallies of other offenses are read in the archive folder/],
    ['larkmoor.xls', 'archive', /save it as .csv or .xlsx/],
  ])('%s in the %s is named with what to do', (name, place, words) => expect(file(name, place)).toMatch(words));
});

describe('a name of something else', () => {
  it.each<[string, ReadPlace]>([
    ['second-chart.csv', 'week'],
    ['notes.txt', 'week'],
    ['practice plan.docx', 'week'],
    ['opponent.pdf', 'week'],
    ['game.mp4', 'week'],
    ['.DS_Store', 'season'],
    ['~$opponent.xlsx', 'week'],
    ['week.yaml.bak', 'week'],
    ['week.yaml~', 'week'],
    ['opponent.csv.old', 'week'],
    ['README.md', 'season'],
    ['LICENSE', 'season'],
    ['roster.csv', 'season'],
    ['thumbs.db', 'archive'],
    ['__proto__', 'season'],
  ])('%s in the %s is not named', (name, place) => expect(file(name, place)).toBeNull());

  it.each<[string, ReadPlace, RegExp | null]>([
    ['archive', 'season', null],
    ['week-08', 'season', null],
    ['examples', 'season', null],
    ['out', 'week', null],
    ['archives', 'season', /call it archive/],
    ['arhcive', 'season', /call it archive/],
    ['wk-8', 'season', /call it week-08 if it is a week/],
    ['opponent', 'week', /it is a folder; put its sheets beside week\.yaml/],
  ])('the folder %s in the %s', (name, place, words) => {
    if (words === null) expect(folder(name, place)).toBeNull();
    else expect(folder(name, place)).toMatch(words);
  });
});
