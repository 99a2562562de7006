import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { tendencyOf } from '../../../src/pressure/snap/tendency.ts';

const { situations: cuts } = weekSettingsSchema.parse({ opponent: 'Harrow Creek' });
const chart = filmFromRecords([
  { down: 3, to_go: 8, play_kind: 'screen', receivers: '3x1', slide: 'left' },
  { down: 3, to_go: 9, play_kind: 'dropback', receivers: '3x1' },
  { down: 3, to_go: 7, play_kind: 'screen', receivers: '2x2', slide: 'right' },
  { down: 3, to_go: 12, play_kind: 'pass', receivers: '2x2' },
  { down: 1, to_go: 10, play_kind: 'screen' },
]);

describe('tendencyOf', () => {
  it('counts only snaps on which every condition holds and keeps the uncharted apart', () => {
    const answer = tendencyOf(chart, { of: 'screen', when: ['third_long'], by: 'receivers' }, cuts);
    if (answer.kind !== 'rows') throw new Error('expected rows');
    expect(
      answer.rows.map(({ value, share, notCharted, snaps }) => [value, share.count, share.trials, notCharted, snaps]),
    ).toEqual([
      ['3x1', 1, 2, 0, [0, 1]],
      ['2x2', 1, 1, 1, [2]],
    ]);
    expect([answer.total.share.count, answer.total.share.trials]).toEqual([2, 3]);
  });

  it('treats a blank as not charted, never as no', () => {
    const answer = tendencyOf(chart, { of: 'slide=left', when: [], by: 'down' }, cuts);
    if (answer.kind !== 'rows') throw new Error('expected rows');
    expect(answer.total.share).toMatchObject({ count: 1, trials: 2 });
    expect(answer.total.notCharted).toBe(3);
    expect(answer.rows.find((row) => row.value === '1')?.share.estimate).toBeNull();
  });

  it('takes a pass for no run, and asks which pass only where a game tells its passes apart', () => {
    const kinds = ['run', 'run', 'pass', 'pass', 'pass', 'screen'];
    const untold = filmFromRecords(kinds.map((play_kind) => ({ game: 'w01', down: 1, to_go: 10, play_kind })));
    const totalOf = (of: string) => {
      const answer = tendencyOf(untold, { of, when: [], by: 'down' }, cuts);
      if (answer.kind !== 'rows') throw new Error('expected rows');
      const { share, notCharted } = answer.total;
      return [share.count, share.trials, notCharted];
    };
    expect(totalOf('run')).toEqual([2, 6, 0]);
    expect(totalOf('answer=run')).toEqual([2, 6, 0]);
    expect(totalOf('screen')).toEqual([0, 0, 6]);
    expect(totalOf('play_kind=screen')).toEqual([1, 6, 0]);
  });

  it.each(['constructor=1', '__proto__=1', 'toString=a', 'valueOf=1', 'constructor', '__proto__'])(
    'says of %s that there is no such name, as of any other: every object has it',
    (name) => {
      for (const question of [
        { of: name, when: [], by: 'down' },
        { of: 'screen', when: [name], by: 'down' },
        { of: 'screen', when: [], by: name },
      ]) {
        const answer = tendencyOf(chart, question, cuts);
        expect(answer.kind === 'problems' && answer.problems.map(({ text }) => text)).toEqual([name]);
      }
    },
  );

  it('compares number columns', () => {
    const answer = tendencyOf(chart, { of: 'screen', when: ['to_go>=9', 'down=3'], by: 'situation' }, cuts);
    if (answer.kind !== 'rows') throw new Error('expected rows');
    expect(answer.total).toMatchObject({ share: { count: 0, trials: 1 }, notCharted: 1 });
  });

  it('names every part of the question it does not understand', () => {
    const answer = tendencyOf(
      chart,
      { of: 'scren', when: ['slide=lefft', 'hight>=3', 'to_go>=x'], by: 'colour' },
      cuts,
    );
    if (answer.kind !== 'problems') throw new Error('expected problems');
    expect(answer.problems.map(({ text }) => text)).toEqual(['scren', 'slide=lefft', 'hight>=3', 'to_go>=x', 'colour']);
    expect(answer.problems[1]?.rule).toContain('left, right');
  });
});
