import { describe, expect, it } from 'vitest';
import type { ColumnName } from '../../../src/game/columns.ts';
import { numberAt, textAt } from '../../../src/game/film.ts';
import { draftProfile } from '../../../src/ingest/adopt/draft-profile.ts';
import { findTable } from '../../../src/ingest/adopt/found-table.ts';
import { profileText } from '../../../src/ingest/adopt/profile-text.ts';
import { answerKey } from '../../../src/ingest/adopt/question.ts';
import { profileSchema } from '../../../src/ingest/profile.ts';
import { readSheet } from '../../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../../src/ingest/row-problem.ts';
import { readYaml } from '../../../src/ingest/yaml-file.ts';
import { coachSheets, coachSnaps, TRUTH } from './coach-sheets.ts';

/** A sheet read through the profile drafted for it, by the first row of the sheet that holds a snap. */
function adopt(text: string, given: Readonly<Record<string, string>> = {}) {
  const answers = new Map(Object.entries(given).map(([key, value]) => [answerKey(key), value]));
  const table = findTable(text);
  const draft = draftProfile({ table, kind: 'opponent', gameName: 'sheet', answers });
  const profile = readYaml(profileText(draft, 'sheet.csv'), profileSchema, 'profile.yaml');
  if (profile.kind === 'problems') throw new Error(profile.problems.map(describeProblem).join('\n'));
  const sheet = { file: 'sheet.csv', bytes: new TextEncoder().encode(text) };
  const reading = readSheet(sheet, { kind: 'opponent', profile: profile.value });
  return { draft, reading };
}

const cellsOf = ({ reading }: ReturnType<typeof adopt>, column: ColumnName) =>
  Array.from(
    { length: reading.chart.size },
    (_, i) => numberAt(reading.chart, column, i) ?? textAt(reading.chart, column, i),
  );

describe('sheets as coaches keep them (invented)', () => {
  it.each(coachSheets().map((sheet) => [sheet.name, sheet] as const))('%s: every column is right', (_, sheet) => {
    const adopted = adopt(sheet.text, sheet.answers);
    expect(adopted.reading.rejected).toEqual([]);
    expect(adopted.draft.strayAnswers).toEqual([]);
    expect(adopted.draft.questions.map(({ key }) => key).filter((key) => key !== 'all/game')).toEqual([]);
    for (const column of sheet.ours) {
      expect([column, cellsOf(adopted, column)]).toEqual([column, sheet.snaps.map((snap) => TRUTH[column]?.(snap))]);
    }
  });

  it.each(coachSheets().map((sheet) => [sheet.name, sheet] as const))('%s: nothing is wrong unasked', (_, sheet) => {
    const adopted = adopt(sheet.text);
    const asked = new Set(adopted.draft.questions.map(({ key }) => key));
    for (const column of sheet.ours) {
      const drafted = adopted.draft.columns.find((one) => one.column === column);
      if (drafted === undefined || [...asked].some((key) => drafted.header.startsWith(key))) continue;
      const wrong = cellsOf(adopted, column).filter((cell, i) => {
        const snap = sheet.snaps[(adopted.reading.chart.rowOf[i] ?? 0) - 2];
        return cell !== undefined && cell !== (snap && TRUTH[column]?.(snap));
      });
      expect([column, wrong]).toEqual([column, []]);
    }
  });
});

describe('what no sheet of its kind can say is asked', () => {
  const snaps = coachSnaps(22, 50);
  const rows = (cell: (snap: (typeof snaps)[number]) => string) => snaps.map(cell).join('\n');
  const line = (yards: number) => (yards > 50 ? 100 - yards : yards);

  it('a yard line from 1 to 50 without a side is not read, and the question says why', () => {
    const body = rows(({ down, toGo, yards, kind, gain }) => [down, toGo, line(yards), kind, gain].join(','));
    const { draft } = adopt(`Down,Distance,Yard line,R/P,Gain\n${body}\n`);
    expect(draft.columns.map(({ column }) => column)).not.toContain('ball_on');
    const question = draft.questions.find(({ key }) => key === 'find/ball_on');
    expect(question?.text).toContain('"Yard line" counts from 1 to 50, and nothing says on which side of the 50');
  });

  it('which number of a date came first, when both could be downs; the answer settles it', () => {
    const short = snaps.map((snap, i) => ({ ...snap, down: 1 + (i % 4), toGo: 4 - (i % 4) }));
    const body = short.map(({ down, toGo, yards, kind }) => `2026-0${down}-0${toGo},${yards},${kind}`).join('\n');
    const text = `DD,YTG,R/P\n${body}\n`;
    const named = { 'find/down': 'DD', 'find/ball_on': 'YTG' };
    expect(adopt(text, named).draft.questions.map(({ key }) => key)).toEqual(['YTG', 'DD/dates', 'all/game']);
    const turned = adopt(text, { ...named, 'DD/dates': 'turned', YTG: 'ball_on as yards_to_goal' });
    expect(turned.draft.strayAnswers).toEqual([]);
    expect(cellsOf(turned, 'down')).toEqual(short.map(({ toGo }) => toGo));
    expect(cellsOf(turned, 'to_go')).toEqual(short.map(({ down }) => down));
  });

  it('which score is which, with both columns named in the answer', () => {
    const sheet = coachSheets().find(({ name }) => name.startsWith('team and yard line'));
    const question = adopt(sheet?.text ?? '').draft.questions.find(({ key }) => key === 'HC');
    expect(question?.choices).toEqual(
      expect.arrayContaining(['score_margin with PLW as plus', 'score_margin with PLW as minus', 'not read']),
    );
    const turned = adopt(sheet?.text ?? '', { HC: 'score_margin with PLW as minus' });
    expect(cellsOf(turned, 'score_margin')).toEqual(sheet?.snaps.map(({ us, them }) => them - us));
    expect(adopt(sheet?.text ?? '', { HC: 'not read' }).reading.chart.columns.score_margin).toBeUndefined();
  });

  it("a staff's own names for its personnel, one by one, and an answer that is no personnel again", () => {
    const sheet = coachSheets().find(({ name }) => name.startsWith('nine columns'));
    const keys = adopt(sheet?.text ?? '', { 'personnel/Ace': 'eleven' }).draft.questions.map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(['personnel/Ace', 'personnel/Deuce', 'personnel/Pro', 'H', 'Call']));
  });

  it('a yard line with a side that is blank on some rows, while both sides are named on others, is not taken for either', () => {
    const body = rows(({ i, down, toGo, yards, kind, gain }) =>
      [down, toGo, i % 10 === 3 ? '' : yards > 50 ? 'OWN' : 'OPP', line(yards), kind, gain].join(','),
    );
    const { reading, draft } = adopt(`Dn,Dist,Side,Yd,R/P,Gain\n${body}\n`);
    expect(draft.profile.columns?.ball_on).toEqual({ header: 'Yd', with: 'Side' });
    // The 50 needs no side.
    expect(reading.rejected).toHaveLength(snaps.filter(({ i, yards }) => i % 10 === 3 && yards !== 50).length);
    expect(reading.rejected[0]?.reasons.join()).toContain('does not say on which side of the 50');
  });

  it('which rows are to be read, when a column says which unit is on the field', () => {
    const body = rows(({ i, down, toGo, yards, kind, gain }) =>
      [i % 5 === 4 ? 'D' : i % 11 === 7 ? 'K' : 'O', down, toGo, yards, kind, gain].join(','),
    );
    const text = `Unit,Dn,Dist,YTG,R/P,Gain\n${body}\n`;
    const { draft, reading } = adopt(text);
    expect(draft.questions.map(({ key }) => key)).toEqual(['rows/Unit', 'all/game']);
    expect(draft.profile.keep_when).toEqual([{ header: 'Unit', is: ['O'] }]);
    const theirs = snaps.filter(({ i }) => i % 5 !== 4 && i % 11 !== 7);
    expect(cellsOf({ draft, reading }, 'gain')).toEqual(theirs.map(({ gain }) => gain));
    expect(adopt(text, { 'rows/Unit': 'all' }).reading.chart.size).toBe(snaps.length);
    const defense = adopt(text, { 'rows/Unit': 'd' });
    expect(defense.draft.strayAnswers).toEqual([]);
    expect(defense.reading.chart.size).toBe(snaps.filter(({ i }) => i % 5 === 4).length);
  });

  it('a yard line with the team of its side, where both teams have the ball: neither side is always the own', () => {
    const both = snaps.map((snap) => ({ ...snap, theirs: Math.floor(snap.i / 10) % 2 === 0 }));
    const body = both.map(({ theirs, down, toGo, yards, kind, gain }) =>
      [theirs ? 'HC' : 'PLW', down, toGo, yards > 50 === theirs ? 'HC' : 'PLW', line(yards), kind, gain].join(','),
    );
    const { draft } = adopt(`Ball,Dn,Dist,Side,Yd,R/P,Gain\n${body.join('\n')}\n`);
    expect(draft.profile.columns?.ball_on).toBeUndefined();
    expect(draft.questions.map(({ key }) => key)).toContain('find/ball_on');
  });
});
