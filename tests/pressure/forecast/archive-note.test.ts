import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastWeek } from '../../../src/pressure/forecast/forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Cedar Falls' });

/** Two snaps a game of one offense. */
const games = (offense: string, count: number, snap: SnapRecord): SnapRecord[] =>
  Array.from({ length: count }, (_, i): SnapRecord[] => [
    { offense, game: `${offense} ${i}`, down: 1, to_go: 10, ...snap },
    { offense, game: `${offense} ${i}`, down: 3, to_go: 8, ...snap },
  ]).flat();

function noteOf(
  archive: readonly SnapRecord[] | null,
  own: SnapRecord = { play_kind: 'screen', motion: 'across' },
): string {
  const chart = filmFromRecords(games('Cedar Falls', 2, own));
  const others = archive === null ? null : filmFromRecords(archive);
  return forecastWeek({ chart, archive: others, settings, seed: 1 }).archive.note;
}

const full: SnapRecord = { play_kind: 'screen', motion: 'across' };

describe('archiveNote', () => {
  it('says what an archive would bring where there is none', () => {
    expect(noteOf(null)).toContain('would steady it');
  });

  it('counts offenses and games, and warns of screens under 32 games and of motion under 16', () => {
    const note = noteOf([...games('Ash Grove', 8, full), ...games('Birch Hill', 4, full)]);
    expect(note).toContain('film of 2 other offenses, 12 games in all');
    expect(note).toContain('screens (charted in 12 of the 32 games that takes)');
    expect(note).toContain('motion (charted in 12 of the 16 games that takes)');
    expect(note).toContain('counts it for as much as its size bears, which did no clear harm, and sets none aside');
  });

  it('warns of screens alone from 16 games on, and of nothing from 32 on', () => {
    const sixteen = noteOf(games('Ash Grove', 16, full));
    expect(sixteen).toContain('screens (charted in 16');
    expect(sixteen).not.toContain('motion');
    expect(noteOf(games('Ash Grove', 32, full))).toBe('The archive is film of 1 other offense, 32 games in all.');
  });

  it('names what nobody charted there, and only what their own film answers', () => {
    const note = noteOf(games('Ash Grove', 40, { play_kind: 'screen' }));
    expect(note).toContain('It says nothing of motion or shift: nobody charted that there.');
    expect(noteOf(games('Ash Grove', 40, { play_kind: 'screen' }), { play_kind: 'screen' })).not.toContain('nobody');
  });
});
