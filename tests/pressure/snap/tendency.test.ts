import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { tendencyOf } from '../../../src/pressure/snap/tendency.ts';
import { questionFaultWords } from '../../../src/report/words/question-words.ts';

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

  it('splits by the rush they faced as four, five, six or more, and by the coverage they faced', () => {
    const faced = [
      [4, 'three_deep', 'dropback'],
      [5, 'man_free', 'screen'],
      [5, 'man_free', 'quick'],
      [7, 'zero', 'screen'],
      [6, 'zero', 'screen'],
      [undefined, undefined, 'screen'],
    ] as const;
    const pressured = filmFromRecords(
      faced.map(([rushers_faced, coverage_faced, play_kind]) => ({
        down: 3,
        to_go: 8,
        play_kind,
        ...(rushers_faced && { rushers_faced, coverage_faced }),
      })),
    );
    const rowsBy = (by: string, when: string[] = []) => {
      const answer = tendencyOf(pressured, { of: 'screen', when, by }, cuts);
      if (answer.kind !== 'rows') throw new Error('expected rows');
      const counted = answer.rows.map(({ value, share }) => [value, share.count, share.trials] as const);
      return counted.filter(([, , trials]) => trials > 0).sort();
    };
    const byRush = [
      ['five', 1, 2],
      ['four', 0, 1],
      ['six_or_more', 2, 2],
    ];
    expect(rowsBy('rush').filter(([value]) => byRush.some(([known]) => known === value))).toEqual(byRush);
    expect(rowsBy('coverage_faced').filter(([value]) => value === 'man_free')).toEqual([['man_free', 1, 2]]);
    expect(rowsBy('coverage_faced', ['rush=six_or_more'])).toEqual([['zero', 2, 2]]);
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
    const notSaid = filmFromRecords(kinds.map((play_kind) => ({ game: 'w01', down: 1, to_go: 10, play_kind })));
    const totalOf = (of: string) => {
      const answer = tendencyOf(notSaid, { of, when: [], by: 'down' }, cuts);
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
    expect(answer.problems[1]?.fault).toMatchObject({ kind: 'unknown_word', asked: 'lefft' });
  });

  describe('asked as a coach asks', () => {
    const film = filmFromRecords([
      { play_kind: 'run', formation: 'Trey Open', ball_on: 20, clock: 110 },
      {
        play_kind: 'quarterback_run',
        formation: 'Trey Open',
        ball_on: 65,
        clock: 130,
        slide: 'left',
        time_to_throw: 2,
      },
      { play_kind: 'pass', formation: 'Deuce', ball_on: 5, clock: 700, slide: 'left', time_to_throw: 2 },
      { play_kind: 'screen', formation: 'Deuce', ball_on: 90, clock: 10, slide: 'right', time_to_throw: 3 },
      { play_kind: 'run', result: 'scramble', ball_on: 50, clock: 300 },
    ]);
    const asked = (of: string, ...when: string[]) => tendencyOf(film, { of, when, by: 'play_kind' }, cuts);
    const totalOf = (of: string, ...when: string[]) => {
      const answer = asked(of, ...when);
      if (answer.kind !== 'rows') throw new Error(answer.problems.map(({ text }) => text).join());
      return [answer.total.share.count, answer.total.share.trials, answer.total.notCharted];
    };
    const ruleOf = (of: string, ...when: string[]) => {
      const answer = asked(of, ...when);
      if (answer.kind !== 'problems') throw new Error('expected problems');
      return answer.problems.map(({ fault }) => questionFaultWords(fault))[0];
    };

    it.each([
      ['pass', 3, 5],
      ['any_run', 2, 5],
      ['run_or_pass=pass', 3, 5],
      ['play_kind=pass', 3, 5],
    ] as const)('counts %s, however finely it was charted', (of, count, trials) => {
      expect(totalOf(of)).toEqual([count, trials, 0]);
    });

    it.each(['run', 'answer=run', 'play_kind=run'])('says what %s leaves out', (of) => {
      const answer = asked(of);
      expect(answer.kind === 'rows' && answer.leftOut).toEqual([
        { asked: of, word: 'quarterback_run', snaps: 1, ask: 'any_run' },
      ]);
      expect(asked('any_run')).toMatchObject({ leftOut: [] });
    });

    it('takes free words in any case and spacing', () => {
      expect(totalOf('any_run', 'formation=TREY OPEN')).toEqual([2, 2, 0]);
      expect(totalOf('formation=treyopen')).toEqual([2, 4, 1]);
    });

    it('takes ball position and clock as they are charted, and writes them so', () => {
      expect(totalOf('pass', 'ball_on<=opp 20')).toEqual([1, 2, 0]);
      expect(totalOf('pass', 'ball_on>=own 35')).toEqual([1, 2, 0]);
      expect(totalOf('ball_on=50')).toEqual([1, 5, 0]);
      expect(totalOf('pass', 'clock<=2:00')).toEqual([1, 2, 0]);
      const byPlace = tendencyOf(film, { of: 'pass', when: [], by: 'ball_on' }, cuts);
      const values = byPlace.kind === 'rows' ? byPlace.rows.map(({ value }) => value) : [];
      expect([...values].sort()).toEqual(['50', 'opp 20', 'opp 5', 'own 10', 'own 35']);
    });

    it('leaves out what was charted of passes on runs', () => {
      expect(totalOf('slide=left')).toEqual([1, 2, 3]);
      expect(totalOf('time_to_throw<=2')).toEqual([1, 2, 3]);
    });

    it('lists what there is when what is asked does not exist', () => {
      expect(ruleOf('pass', 'formation=Trips')).toBe('asks for "Trips"; charted are Deuce, Trey Open');
      expect(ruleOf('hash=left')).toBe(
        'asks for hash, which is not charted; charted are clock, ball_on, formation, play_kind, slide, time_to_throw, result',
      );
      expect(ruleOf('ball_on=midfield')).toContain('a ball position such as own 35 or opp 20');
      const split = tendencyOf(film, { of: 'pass', when: [], by: 'tempo' }, cuts);
      expect(split.kind === 'problems' && split.problems.map(({ fault }) => questionFaultWords(fault))[0]).toMatch(
        /^cannot be split by; choose one of answer, run_or_pass/,
      );
    });
  });
});
