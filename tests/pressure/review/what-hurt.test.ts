import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { firstSeen } from '../../../src/pressure/review/first-seen.ts';
import { whatHurt } from '../../../src/pressure/review/what-hurt.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Larkmoor Herons' }).situations;
const snap = (number: number, more: SnapRecord): SnapRecord => ({
  snap: number,
  down: 1,
  to_go: 10,
  play_kind: 'run',
  ...more,
});

describe('what hurt us', () => {
  const film = filmFromRecords([
    snap(1, { gain: 1, call: 'Rake' }),
    snap(2, { gain: 15, call: 'Rake' }),
    snap(3, { gain: 5, call: 'Rake' }),
    snap(4, { gain: 40, call: 'Torch', play_kind: 'deep_shot', down: 3, to_go: 12 }),
    snap(5, { call: 'Torch' }),
  ]);
  const hurt = whatHurt(film, cuts);

  // Explosive is a pass of 20 or a run of 12; on schedule is 40% of the distance on first down (Carroll, Palmer and Thorn
  // 1988, The Hidden Game of Football).
  it('lists the big plays, the longest first, with snap, situation, call and what they ran', () => {
    expect(hurt.plays).toEqual([
      { snap: '4', situation: 'third_long', call: 'Torch', answer: 'deep_shot', gain: 40 },
      { snap: '2', situation: 'first_ten', call: 'Rake', answer: 'run', gain: 15 },
    ]);
  });

  it('counts how often each call and situation was beaten, of the snaps with a known outcome', () => {
    expect(hurt.calls).toMatchObject([
      { name: 'Rake', beaten: { count: 2, trials: 3 }, bigPlays: 1, snaps: ['2', '3'] },
      { name: 'Torch', beaten: { count: 1, trials: 1 }, bigPlays: 1, snaps: ['4'] },
    ]);
    expect(hurt.situations.map(({ name, beaten }) => [name, beaten.count, beaten.trials])).toEqual([
      ['first_ten', 2, 3],
      ['third_long', 1, 1],
    ]);
  });

  it('names no call where none was charted', () => {
    const bare = whatHurt(filmFromRecords([{ down: 1, to_go: 10, play_kind: 'run', gain: 30 }]), cuts);
    expect(bare.calls).toEqual([]);
    expect(bare.plays).toMatchObject([{ snap: 'row 2', call: null }]);
  });
});

describe('what the film did not show', () => {
  const filmed = Array.from({ length: 24 }, (_, i) => snap(i, { formation: 'Table', motion: 'none' }));
  const film = filmFromRecords(filmed);
  const game = (...records: SnapRecord[]) => filmFromRecords(records);

  it('names a formation first seen in the game with its snaps, whatever its spelling', () => {
    const found = firstSeen({
      film,
      cuts,
      game: game(snap(7, { formation: 'Quilt' }), snap(9, { formation: 'quilt' }), snap(11, { formation: ' table' })),
    });
    expect(found).toEqual([{ kind: 'formation', value: 'Quilt', situation: null, filmSnaps: 24, snaps: ['7', '9'] }]);
  });

  it('names an answer first seen in its situation, where the film shows the situation often enough', () => {
    const screen = snap(12, { play_kind: 'screen' });
    const rare = snap(13, { play_kind: 'screen', down: 3, to_go: 15 });
    expect(firstSeen({ film, cuts, game: game(screen, rare) })).toEqual([
      { kind: 'answer', value: 'screen', situation: 'first_ten', filmSnaps: 24, snaps: ['12'] },
    ]);
  });

  it('says nothing of what the film hardly charted', () => {
    const found = firstSeen({ film, cuts, game: game(snap(7, { concept: 'power', personnel: '12' })) });
    expect(found).toEqual([]);
  });
});
