import { describe, expect, it } from 'vitest';
import type { Review } from '../../../src/pressure/review/review.ts';
import { beatenLines, beatenOverGames, firstSeenWords, snapWords } from '../../../src/report/words/hurt-words.ts';
import { share } from '../../../src/stats/share.ts';

const count = (name: string, beaten: number, of: number) => ({
  name,
  beaten: share(beaten, of),
  bigPlays: beaten > 2 ? 1 : 0,
  snaps: Array.from({ length: beaten }, (_, i) => String(3 * i + 1)),
});

describe('what hurt us in words', () => {
  it('names who was beaten twice or more on three snaps or more, with the snaps', () => {
    const counts = [count('Latch Lock', 3, 4), count('Rake', 2, 2), count('Torch', 1, 9)];
    expect(beatenLines(counts, (name) => name)).toEqual([
      'Latch Lock: beaten on 3 of 4 (75%), 1 big play; snaps 1, 4 and 7.',
    ]);
  });

  it('adds the situations of a season up, and names none that was hardly beaten', () => {
    const game = (...situations: readonly ReturnType<typeof count>[]) => {
      return { hurt: { situations } } as unknown as Review;
    };
    const season = [
      game(count('third_long', 1, 4), count('first_ten', 0, 20), count('second_long', 1, 5)),
      game(count('third_long', 3, 5), count('first_ten', 0, 22), count('fourth_short', 2, 2)),
    ];
    expect(beatenOverGames(season)).toEqual(['3rd and long: beaten on 4 of 9 (44%), 1 big play.']);
    expect(beatenOverGames([])).toEqual([]);
  });

  it('counts the snaps it does not name', () => {
    expect(snapWords(['5'])).toBe('snap 5');
    expect(snapWords(Array.from({ length: 10 }, (_, i) => String(i)))).toBe('snaps 0, 1, 2, 3, 4, 5, 6, 7 and 2 more');
  });

  it('says how much film did not show a thing', () => {
    const found = { filmSnaps: 25, snaps: ['46'] };
    expect(firstSeenWords({ ...found, kind: 'answer', value: 'deep_shot', situation: 'third_long' })).toBe(
      'Deep shot on 3rd and long: snap 46 (none on 25 film snaps).',
    );
    expect(firstSeenWords({ ...found, kind: 'formation', value: 'Quilt', situation: null })).toBe(
      'Formation Quilt: snap 46 (none on 25 film snaps).',
    );
  });
});
