import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastWeek } from '../../../src/pressure/forecast/week/forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Cinder Vale' });

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
  const chart = filmFromRecords(games('Cinder Vale', 2, own));
  const others = archive === null ? null : filmFromRecords(archive);
  return forecastWeek({ chart, archive: others, settings, seed: 1 }).archive.note;
}

const full: SnapRecord = { play_kind: 'screen', motion: 'across' };

describe('archiveNote', () => {
  it('says what an archive would bring where there is none', () => {
    expect(noteOf(null)).toContain('would steady it');
  });

  it('counts offenses and games, and says how much each film counts', () => {
    const note = noteOf([...games('Ash Grove', 8, full), ...games('Birch Hill', 4, full)]);
    const [, own, others] = /their own film counts (\d+)%, the other offenses (\d+)%/.exec(note)!.map(Number);
    expect(note).toContain('film of 2 other offenses, 12 games in all');
    expect(own! + others!).toBe(100);
    expect(own).toBeGreaterThan(0);
    expect(noteOf(games('Ash Grove', 1, full))).toContain('film of 1 other offense, 1 game in all.');
  });

  it('names what nobody charted there, and only what their own film answers', () => {
    const note = noteOf(games('Ash Grove', 40, { play_kind: 'screen' }));
    expect(note).toContain('It says nothing of motion or shift: nobody charted that there.');
    expect(noteOf(games('Ash Grove', 40, { play_kind: 'screen' }), { play_kind: 'screen' })).not.toContain('nobody');
  });
});
