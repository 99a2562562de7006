import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ColumnName, FILM_COLUMNS } from '../../src/game/columns.ts';
import { writeClock, writeFieldPosition } from '../../src/game/written-numbers.ts';
import { definitionOf } from '../../src/ingest/profile.ts';
import { readCell } from '../../src/ingest/read-cell.ts';
import { personnelCounts } from '../../src/ingest/read-shape.ts';

const read = (name: ColumnName, text: string) => readCell(definitionOf(name), text);
const valueRead = (name: ColumnName, text: string) => {
  const reading = read(name, text);
  return reading.kind === 'value' ? reading.value : reading.kind;
};
const suggestionOf = (name: ColumnName, text: string) => {
  const reading = read(name, text);
  return reading.kind === 'fault' ? reading.suggestion : reading.kind;
};

describe('readCell', () => {
  const values: readonly [ColumnName, string, string | number][] = [
    ['ball_on', 'own 35', 65],
    ['ball_on', 'OWN 35', 65],
    ['ball_on', 'own35', 65],
    ['ball_on', 'own-35', 65],
    ['ball_on', '-35', 65],
    ['ball_on', '\u221235', 65],
    ['ball_on', 'o35', 65],
    ['ball_on', 'opp 20', 20],
    ['ball_on', '+20', 20],
    ['ball_on', '50', 50],
    ['ball_on', 'own 50', 50],
    ['ball_on', 'own 1', 99],
    ['ball_on', 'opp 1', 1],
    ['clock', '7:42', 462],
    ['clock', '07:42', 462],
    ['clock', ':42', 42],
    ['clock', '0:00', 0],
    ['clock', '15:00', 900],
    ['clock', '7:42:00', 462],
    ['to_go', '10', 10],
    ['to_go', ' 10 ', 10],
    ['to_go', '10.0', 10],
    ['gain', '-7', -7],
    ['gain', '\u22127', -7],
    ['gain', '\u20137', -7],
    ['gain', '\u20147', -7],
    ['ball_on', '\u201335', 65],
    ['score_margin', '\uff0d7', -7],
    ['gain', '+7', 7],
    ['gain', '-0', 0],
    ['time_to_throw', '2.45', 2.45],
    ['time_to_throw', '2,45', 2.45],
    ['time_to_throw', '.9', 0.9],
    ['play_kind', 'Deep Shot', 'deep_shot'],
    ['play_kind', 'QUARTERBACK-RUN', 'quarterback_run'],
    ['checked', 'Yes', 'yes'],
    ['personnel', '01', '01'],
    ['personnel', '11*', '11*'],
    ['receivers', '3X1', '3x1'],
    ['receivers', '2 × 2', '2x2'],
    ['formation', '  Trey\u00a0 Open ', 'Trey Open'],
    ['formation', "'=1+1", '=1+1'],
    ['formation', "'tis", "'tis"],
  ];

  it.each(values)('reads %s written as %j as %j', (name, text, value) => {
    expect(valueRead(name, text)).toBe(value);
  });

  it.each(FILM_COLUMNS.map(({ name }) => name))('takes a blank %s as not charted', (name) => {
    for (const blank of ['', ' ', '\t', '\u00a0', '\r', '\u200b', '\ufeff'])
      expect(read(name, blank).kind).toBe('blank');
  });

  const faults: readonly [ColumnName, string, string | undefined][] = [
    ['to_go', '1O', 'Did you mean "10"? The last character is the letter O.'],
    ['to_go', 'l0', 'Did you mean "10"? The first character is the letter l.'],
    ['to_go', '8 yds', 'Did you mean "8"?'],
    ['to_go', '2.5', undefined],
    ['to_go', '0', undefined],
    ['to_go', '100', undefined],
    ['to_go', 'n/a', 'Leave the cell blank when it was not charted.'],
    ['down', '3rd', 'Did you mean "3"?'],
    ['down', '5', undefined],
    ['hash', 'L', 'Did you mean "left"?'],
    ['motion', 'Y', 'Type shift, short, across, fast or back_out, or leave motion blank on every snap.'],
    ['motion', 'jet', undefined],
    ['hash', 'centre', undefined],
    ['play_kind', 'scren', 'Did you mean "screen"?'],
    ['play_kind', 'dr0pback', 'Did you mean "dropback"? The third character is the digit 0.'],
    [
      'play_kind',
      'r\u057dn',
      'Did you mean "run"? The second character is a letter of another alphabet that only looks like it.',
    ],
    ['back_action', 'releases', undefined],
    ['ball_on', '35', 'Did you mean "own 35" or "opp 35"?'],
    ['ball_on', 'own 3S', 'Did you mean "own 35"? The last character is the letter S.'],
    ['ball_on', 'op 20', 'Did you mean "opp 20"?'],
    ['ball_on', 'own 0', undefined],
    ['ball_on', 'own 51', undefined],
    ['ball_on', '65', 'If the sheet counts yards to the goal line, a profile can say so.'],
    ['clock', '742', 'Did you mean "7:42"?'],
    ['clock', '7.42', 'Did you mean "7:42"?'],
    ['clock', '7:75', undefined],
    ['clock', '16:00', undefined],
    ['personnel', '1', 'Did you mean "01"? Spreadsheets drop a zero in front.'],
    ['personnel', '1l', 'Did you mean "11"? The last character is the letter l.'],
    ['personnel', '33', undefined],
    ['receivers', '1x3', 'Did you mean "3x1"?'],
    ['receivers', '3-1', 'Did you mean "3x1"?'],
    ['receivers', '4x2', undefined],
    ['gain', '(3)', 'Did you mean "-3"?'],
    ['gain', '3-', 'Did you mean "-3"?'],
    ['gain', '3\u2013', 'Did you mean "-3"?'],
    ['gain', 'loss of 3', 'Did you mean "-3"?'],
    ['gain', '3 yd loss', 'Did you mean "-3"?'],
    ['gain', '.5', undefined],
    ['gain', '--3', undefined],
    ['to_go', '(3)', undefined],
    ['protectors', '\u2013', 'Leave the cell blank when it was not charted.'],
    ['protectors', '-', 'Leave the cell blank when it was not charted.'],
  ];

  it.each(faults)('refuses %s written as %j and suggests %j', (name, text, suggestion) => {
    expect(read(name, text).kind).toBe('fault');
    expect(suggestionOf(name, text)).toBe(suggestion);
  });

  it('takes out characters that cannot be seen, with a remark', () => {
    expect(read('formation', 'trey\u0000 op\u202een')).toEqual({
      kind: 'value',
      value: 'trey open',
      remark: 'holds characters that cannot be seen; they were left out',
    });
  });

  it('never throws, and never suggests what was written', () => {
    const name = fc.constantFrom(...FILM_COLUMNS.map((column) => column.name));
    fc.assert(
      fc.property(name, fc.oneof(fc.string(), fc.stringMatching(/^[0-9OolISB: x.+-]{1,6}$/)), (column, text) => {
        const reading = read(column, text);
        if (reading.kind === 'fault') expect(reading.suggestion ?? '').not.toContain(`Did you mean "${text.trim()}"`);
        if (reading.kind === 'value') expect(reading.value === '' || Number.isNaN(reading.value)).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it('reads every ball position and clock it writes', () => {
    for (let yards = 1; yards <= 99; yards++) expect(valueRead('ball_on', writeFieldPosition(yards))).toBe(yards);
    for (let seconds = 0; seconds <= 900; seconds++) expect(valueRead('clock', writeClock(seconds))).toBe(seconds);
  });

  it('counts backs and tight ends of a personnel code', () => {
    expect(personnelCounts('12')).toEqual({ backs: 1, tightEnds: 2, extraLinemen: 0 });
    expect(personnelCounts('21*')).toEqual({ backs: 2, tightEnds: 1, extraLinemen: 1 });
    expect(personnelCounts('nickel')).toBeUndefined();
  });
});
