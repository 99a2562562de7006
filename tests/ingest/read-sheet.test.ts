import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartedCount, type Film, numberAt, textAt } from '../../src/game/film.ts';
import { readSheet, type SheetKind, type SheetReading } from '../../src/ingest/read-sheet.ts';
import { describeProblem, groupProblems } from '../../src/ingest/row-problem.ts';
import { createSheetReader } from '../../src/ingest/sheet-reader.ts';
import { toCsv } from '../../src/ingest/write-csv.ts';

const HEADER = 'game,snap,down,to_go,ball_on,play_kind,formation,gain';
const SOUND = 'w1,1,1,10,own 35,run,trey open,4';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const read = (text: string, kind: SheetKind = 'opponent') =>
  readSheet({ file: 'plays.csv', bytes: bytesOf(text) }, { kind });
const said = (reading: SheetReading) => reading.problems.map(describeProblem);
const snapsOf = (chart: Film) =>
  Array.from({ length: chart.size }, (_, i) =>
    JSON.stringify([
      textAt(chart, 'game', i),
      numberAt(chart, 'snap', i),
      numberAt(chart, 'ball_on', i),
      textAt(chart, 'formation', i),
    ]),
  );

describe('readSheet, RFC 4180', () => {
  const rows: readonly { source: string; text: string; formations: readonly (string | undefined)[] }[] = [
    {
      source: 'RFC 4180 section 2 rule 1: each record on its own line, ended by CRLF',
      text: `${HEADER}\r\n${SOUND}\r\nw1,2,2,6,own 39,run,trips,3\r\n`,
      formations: ['trey open', 'trips'],
    },
    {
      source: 'RFC 4180 section 2 rule 2: the last record may or may not have an ending line break',
      text: `${HEADER}\r\n${SOUND}`,
      formations: ['trey open'],
    },
    {
      source: 'RFC 4180 section 2 rule 5: a field may or may not be enclosed in double quotes',
      text: `${HEADER}\r\n"w1","1","1","10","own 35","run","trey","4"\r\nw1,2,2,6,own 39,run,trips,3\r\n`,
      formations: ['trey', 'trips'],
    },
    {
      source: 'RFC 4180 section 2 rule 6: commas and double quotes inside double quotes',
      text: `${HEADER}\r\nw1,1,1,10,own 35,run,"trey, open",4\r\n`,
      formations: ['trey, open'],
    },
    {
      source: 'RFC 4180 section 2 rule 6: line breaks inside double quotes (shown as a space)',
      text: `${HEADER}\r\nw1,1,1,10,own 35,run,"trey\r\nopen",4\r\n${SOUND.replace('w1,1', 'w1,2')}\r\n`,
      formations: ['trey open', 'trey open'],
    },
    {
      source: 'RFC 4180 section 2 rule 7: a double quote inside a quoted field is doubled',
      text: `${HEADER}\r\nw1,1,1,10,own 35,run,"the ""trey"" set",4\r\n`,
      formations: ['the "trey" set'],
    },
  ];

  it.each(rows)('$source', ({ text, formations }) => {
    const { chart, problems } = read(text);
    expect(problems).toEqual([]);
    expect(Array.from({ length: chart.size }, (_, i) => textAt(chart, 'formation', i))).toEqual(formations);
  });

  it('RFC 4180 section 2 rule 4: every line holds the same number of fields; others are rejected and named', () => {
    const { chart, rejected, problems } = read(`${HEADER}\n${SOUND}\nw1,2,2,6\n${SOUND.replace('w1,1', 'w1,3')},x\n`);
    expect(chart.size).toBe(1);
    expect(rejected.map(({ row, cells }) => [row, cells.length])).toEqual([
      [3, 4],
      [4, 9],
    ]);
    expect(problems.every(({ severity }) => severity === 'fault')).toBe(true);
  });
});

describe('readSheet, what a chart holds', () => {
  it('stores ball_on as yards to the goal line, the clock as seconds, and words in one spelling', () => {
    const { chart } = read('game,down,to_go,ball_on,play_kind,clock,motion\nw1,3,8,own 35,Deep Shot,7:42,BACK-OUT\n');
    expect(numberAt(chart, 'ball_on', 0)).toBe(65);
    expect(numberAt(chart, 'clock', 0)).toBe(462);
    expect(textAt(chart, 'play_kind', 0)).toBe('deep_shot');
    expect(textAt(chart, 'motion', 0)).toBe('back_out');
  });

  it('takes a blank as not charted, never as no or 0', () => {
    const header = 'game,down,to_go,ball_on,play_kind,gain,checked,protectors,backs_released,note';
    const { chart, problems } = read(`${header}\nw1,1,10,own 35,run,,,,,\nw1,1,10,own 35,run, ,\t, , ,x\n`);
    expect(problems).toEqual([]);
    for (const name of ['gain', 'protectors', 'backs_released'] as const) {
      expect(numberAt(chart, name, 0)).toBeUndefined();
      expect(chartedCount(chart, name)).toBe(0);
    }
    expect(textAt(chart, 'checked', 0)).toBeUndefined();
    expect(chartedCount(chart, 'checked')).toBe(0);
  });

  it('remembers the spreadsheet row of every snap, blank rows counted', () => {
    const { chart, blankRows, rowsRead } = read(`\n${HEADER}\n${SOUND}\n\n,,,,,,,\n${SOUND.replace('w1,1', 'w1,2')}\n`);
    expect([...chart.rowOf]).toEqual([3, 6]);
    expect(blankRows).toBe(3);
    expect(rowsRead).toBe(2);
  });

  it('keeps a faulty row out of the numbers, as written and with its reason', () => {
    const { chart, rejected } = read(`${HEADER}\n${SOUND}\nw1,2,2,1O,own 39,run,only here,4\n`);
    expect(chart.size).toBe(1);
    expect(chart.columns.formation).toMatchObject({ values: ['', 'trey open'] });
    expect(rejected[0]?.cells).toEqual(['w1', '2', '2', '1O', 'own 39', 'run', 'only here', '4']);
    expect(rejected[0]?.reasons).toEqual([
      'column D ("to_go"): "1O" is not a whole number of yards. Did you mean "10"? The last character is the letter O.',
    ]);
  });

  it('loses no snap to a word nobody knows in a column that no snap needs: the cell is blank, and said once', () => {
    const rows = [1, 2, 3, 4].map((snap) => `w1,${snap},1,10,own 35,run,${snap === 4 ? 'across' : 'orbital'}`);
    const reading = read(`game,snap,down,to_go,ball_on,play_kind,motion\n${rows.join('\n')}\n`);
    expect([reading.chart.size, reading.rejected]).toEqual([4, []]);
    expect(reading.chart.columns.motion).toMatchObject({ values: ['', 'across'] });
    const { groups } = groupProblems(reading.problems, 10);
    expect(groups.map(({ problem, count }) => [problem.severity, problem.found, count])).toEqual([
      ['warning', 'orbital', 3],
    ]);
    const needed = read(`game,snap,down,to_go,ball_on,play_kind\nw1,1,1,10,own 35,rnu\n`);
    expect([needed.chart.size, needed.rejected.length]).toEqual([0, 1]);
  });

  it('rejects a snap that its game has already, the second time only', () => {
    const { chart, rejected, problems } = read(`${HEADER}\n${SOUND}\n${SOUND}\n${SOUND.replace('w1', 'w2')}\n`);
    expect(chart.size).toBe(2);
    expect(rejected.map(({ row }) => row)).toEqual([3]);
    expect(problems[0]).toMatchObject({ severity: 'fault', header: 'snap', found: '1', columnLetter: 'B' });
  });

  it('rejects a snap without a number at a moment and place that its game has already', () => {
    const header = 'game,quarter,clock,down,to_go,ball_on,play_kind';
    const row = 'w1,2,7:42,1,10,own 35,run';
    const other = row.replace('7:42', '7:10');
    const { chart, rejected, problems } = read(`${header}\n${row}\n${other}\n${row}\n${row.replace('w1', 'w2')}\n`);
    expect(chart.size).toBe(3);
    expect(rejected.map(({ row: at }) => at)).toEqual([4]);
    expect(problems[0]).toMatchObject({ severity: 'fault', header: 'clock', found: '7:42' });
  });

  it('keeps equal snaps of which neither number nor moment was charted: they may be two', () => {
    const bare = 'w1,,1,10,own 35,run,trey open,4';
    expect(read(`${HEADER}\n${bare}\n${bare}\n`).chart.size).toBe(2);
  });

  it('does not let a rejected row claim its snap number', () => {
    const { chart } = read(`${HEADER}\n${SOUND.replace('own 35', '35')}\n${SOUND}\n`);
    expect(chart.size).toBe(1);
  });
});

describe('readSheet, wrong inputs', () => {
  const table: readonly { name: string; text: string; size: number; says: RegExp }[] = [
    { name: 'an empty file', text: '', size: 0, says: /^plays\.csv: is empty/ },
    { name: 'a file of blank lines', text: '\n\n  \n', size: 0, says: /is empty/ },
    { name: 'a header only', text: `${HEADER}\n`, size: 0, says: /has a header row and no snaps/ },
    {
      name: 'unknown headers',
      text: 'game,down,distance,ball_on,play_kind\nw1,1,10,50,run\n',
      size: 0,
      says: /no column is headed to_go/,
    },
    {
      name: 'a header that is nearly known',
      text: 'game,down,to_go,ball_on,play_kind,formaton\nw1,1,10,50,run,trey\n',
      size: 1,
      says: /column F: "formaton" is not a header we know; the column is not read\. Did you mean "formation"\?/,
    },
    {
      name: 'a required header that is nearly there',
      text: 'game,down,togo,ball_on,play_kind\nw1,1,10,50,run\n',
      size: 0,
      says: /no column is headed to_go, which every snap needs\. Did you mean the column "togo" \(C\)\?/,
    },
    {
      name: 'a repeated header',
      text: 'game,down,to_go,ball_on,play_kind,down\nw1,1,10,50,run,1\n',
      size: 0,
      says: /column F: "down" stands over column B as well/,
    },
    {
      name: 'a column without a header',
      text: 'game,down,to_go,ball_on,play_kind,\nw1,1,10,50,run,\nw1,1,10,50,run,lost\n',
      size: 2,
      says: /row 3, column F: "lost" stands in a column that has no header/,
    },
    {
      name: 'a misspelt value',
      text: `${HEADER}\n${SOUND.replace('run', 'scren')}\n`,
      size: 0,
      says: /row 2, column F \("play_kind"\): "scren" is not one of .* Did you mean "screen"\?/,
    },
    {
      name: 'a blank where a value is needed',
      text: `${HEADER}\n${SOUND.replace('10', '')}\n`,
      size: 0,
      says: /column D \("to_go"\): is blank, and every snap needs to_go/,
    },
    {
      name: 'a yard line without a side',
      text: `${HEADER}\n${SOUND.replace('own 35', '35')}\n`,
      size: 0,
      says: /"35" does not say on which side of the 50\. Did you mean "own 35" or "opp 35"\?/,
    },
    {
      name: 'a distance beyond the goal line',
      text: `${HEADER}\n${SOUND.replace('own 35', 'opp 5')}\n`,
      size: 0,
      says: /"10" is more than the 5 yards to the goal line/,
    },
    {
      name: 'an open quotation mark',
      text: `${HEADER}\nw1,1,1,10,own 35,run,"trey,4\n${SOUND}\n`,
      size: 1,
      says: /row 2: a quotation mark is not closed/,
    },
    {
      name: 'an open quotation mark that a later one seems to close',
      text: `${HEADER}\nw1,1,1,10,own 35,run,"trey,4\n${SOUND}\nw1,2,1,10,own 35,run,odd",4\n`,
      size: 2,
      says: /row 2: a quotation mark is not closed/,
    },
    {
      name: 'control characters',
      text: `${HEADER}\n${SOUND.replace('trey', 'tr\u0007ey')}\n`,
      size: 1,
      says: /"tr\\u0007ey open" holds characters that cannot be seen; they were left out/,
    },
  ];

  it.each(table)('$name is answered in plain words', ({ text, size, says }) => {
    const reading = read(text);
    expect(said(reading).some((line) => says.test(line))).toBe(true);
    expect(reading.chart.size).toBe(size);
  });

  it('reads a sheet of one snap', () => {
    expect(read(`${HEADER}\n${SOUND}`).chart.size).toBe(1);
  });

  it.each([['<script>alert(1)</script>'], ['=cmd()'], ["'=HYPERLINK(1)"], ['@sum']])(
    'keeps %s as text',
    (formation) => {
      const { chart, problems } = read(`${HEADER}\n${SOUND.replace('trey open', formation)}\n`);
      expect(problems).toEqual([]);
      expect(textAt(chart, 'formation', 0)).toBe(formation.replace(/^'/, ''));
    },
  );

  it('gives the same snaps for LF, CRLF and CR, for comma, semicolon and tab, and for every encoding', () => {
    const text = `${HEADER}\n${SOUND}\nw1,2,2,6,own 39,run,"a b",3\n`;
    const utf16 = (order: 'le' | 'be', mark: string) => {
      const units = Uint16Array.from(`${mark}${text}`, (letter) => letter.charCodeAt(0));
      const view = new DataView(new ArrayBuffer(units.length * 2));
      units.forEach((unit, i) => {
        view.setUint16(i * 2, unit, order === 'le');
      });
      return new Uint8Array(view.buffer);
    };
    const forms: readonly [string, Uint8Array][] = [
      ['crlf', bytesOf(text.replaceAll('\n', '\r\n'))],
      ['cr', bytesOf(text.replaceAll('\n', '\r'))],
      ['semicolons', bytesOf(text.replaceAll(',', ';'))],
      ['tabs', bytesOf(text.replaceAll(',', '\t'))],
      ['byte-order mark', bytesOf(`\uFEFF${text}`)],
      ['utf-16le with mark', utf16('le', '\uFEFF')],
      ['utf-16be with mark', utf16('be', '\uFEFF')],
      ['utf-16le without mark', utf16('le', '')],
      ['utf-16be without mark', utf16('be', '')],
    ];
    const plain = read(text);
    for (const [name, bytes] of forms) {
      const reading = readSheet({ file: 'plays.csv', bytes }, { kind: 'opponent' });
      expect(snapsOf(reading.chart), name).toEqual(snapsOf(plain.chart));
      expect(reading.problems, name).toEqual([]);
      expect([...reading.chart.rowOf], name).toEqual([2, 3]);
    }
  });

  it('falls back to Windows-1252, and says so', () => {
    const bytes = bytesOf(`${HEADER}\n${SOUND}\n`).map((byte) => (byte === 'y'.charCodeAt(0) ? 0xe9 : byte));
    const header = bytesOf(HEADER);
    bytes.set(header);
    const reading = readSheet({ file: 'plays.csv', bytes }, { kind: 'opponent' });
    expect(textAt(reading.chart, 'formation', 0)).toBe('treé open');
    expect(said(reading)[0]).toMatch(/read as Windows-1252/);
  });
});

describe('readSheet, kinds of sheet', () => {
  it('asks of our own film one of call, path, family or coverage', () => {
    const bare = read('game,down,to_go,ball_on\nw1,1,10,50\n', 'own');
    expect(said(bare)[0]).toMatch(/at least one of the columns call, path, family, coverage/);
    const called = read('game,down,to_go,ball_on,call\nw1,1,10,50,Anchor\nw1,1,10,50,\n', 'own');
    expect(called.chart.size).toBe(2);
    expect(called.problems).toMatchObject([{ severity: 'warning', row: 3 }]);
  });

  it('asks of a live sheet only down, to_go and play_kind, and keeps its faulty rows out', () => {
    const live = read('down,to_go,play_kind\n1,10,run\n2,x,run\n', 'live');
    expect(live.chart.size).toBe(1);
    expect(live.rejected).toHaveLength(1);
  });

  it('does not read a column of our own film from an opponent sheet', () => {
    const reading = read('game,down,to_go,ball_on,play_kind,coverage\nw1,1,10,50,run,two deep\n');
    expect(reading.chart.columns.coverage).toBeUndefined();
    expect(reading.unmapped).toEqual(['coverage']);
    expect(said(reading)[0]).toMatch(/belongs to our own film/);
  });
});

describe('readSheet, properties', () => {
  const cell = fc.constantFrom('own 35', 'opp 20', '35', '', '50');
  const rows = fc.array(fc.tuple(fc.constantFrom('1', '2', '3', 'x'), cell, fc.constantFrom('run', 'quik')), {
    maxLength: 12,
  });
  const sheetOf = (list: readonly (readonly string[])[]) =>
    toCsv([
      ['game', 'down', 'ball_on', 'play_kind', 'to_go'],
      ...list.map((row) => ['w1', row[0] ?? '', row[1] ?? '', row[2] ?? '', '1']),
    ]);
  const contentOf = ({ chart }: SheetReading) =>
    Array.from(
      { length: chart.size },
      (_, i) => `${numberAt(chart, 'down', i)} ${numberAt(chart, 'ball_on', i)}`,
    ).sort();

  it('finds the same snaps and faults whatever the order of the rows', () => {
    fc.assert(
      fc.property(rows, (list) => {
        const [there, back] = [read(sheetOf(list)), read(sheetOf([...list].reverse()))];
        expect(contentOf(back)).toEqual(contentOf(there));
        const faults = (reading: SheetReading) => reading.problems.map(({ found, rule }) => `${found} ${rule}`).sort();
        expect(faults(back)).toEqual(faults(there));
      }),
      { numRuns: 60 },
    );
  });

  it('loses no row: read rows are snaps or rejected ones', () => {
    fc.assert(
      fc.property(rows, (list) => {
        const { chart, rejected, rowsRead } = read(sheetOf(list));
        expect(chart.size + rejected.length).toBe(rowsRead);
        expect(rowsRead).toBe(list.length);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps every snap of a long sheet, also where its first rows say little of how long the others are', () => {
    const note = fc.constantFrom(0, 40, 400);
    fc.assert(
      fc.property(note, note, (early, late) => {
        const list = Array.from({ length: 4000 }, (_, i) => ({
          game: `w${i % 7}`,
          snap: 1 + Math.floor(i / 7),
          gain: i % 50,
        }));
        const lines = list.map(({ game, snap, gain }, i) => {
          const formation = 'x'.repeat(1 + (i < 1500 ? early : late));
          return `${game},${snap},1,10,own 35,run,${formation},${gain}`;
        });
        const { chart } = read(`${HEADER}\n${lines.join('\n')}\n`);
        const found = Array.from({ length: chart.size }, (_, i) => ({
          game: textAt(chart, 'game', i),
          snap: numberAt(chart, 'snap', i),
          gain: numberAt(chart, 'gain', i),
        }));
        expect(found).toEqual(list);
        expect([...chart.rowOf]).toEqual(list.map((_, i) => i + 2));
      }),
      { numRuns: 9 },
    );
  });

  it('reads text in pieces of any size as it reads the whole', () => {
    const text = `${HEADER}\r\n${SOUND}\r\nw1,2,2,6,own 39,run,"a ""b""\r\nc, d",3\r\nw1,3,2,x,own 39,run,"e,3\r\n`;
    const whole = read(text);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), (size) => {
        const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, i) =>
          text.slice(i * size, (i + 1) * size),
        );
        const reader = createSheetReader({ file: 'plays.csv', encoding: 'utf-8' }, { kind: 'opponent' });
        for (const piece of pieces) reader.push(piece);
        const streamed = reader.finish();
        expect(snapsOf(streamed.chart)).toEqual(snapsOf(whole.chart));
        expect(streamed.problems).toEqual(whole.problems);
        expect(streamed.rejected).toEqual(whole.rejected);
      }),
      { numRuns: 40 },
    );
  });
});

describe('rows left out on purpose', () => {
  it('stay out of the chart and keep their cells, their fault and their place', () => {
    const text = 'game,down,to_go,ball_on,play_kind\ng1,1,10,own 35,run\ng1,2,7,own 38,pass\n';
    const fault = {
      severity: 'fault',
      file: 's.csv',
      row: 3,
      found: 'g1',
      rule: 'is listed already in t.csv, row 2',
    } as const;
    const reading = readSheet(
      { file: 's.csv', bytes: new TextEncoder().encode(text) },
      { kind: 'opponent', leaveOut: new Map([[3, fault]]) },
    );
    expect(reading.chart.size).toBe(1);
    expect(reading.rejected.map(({ row, cells, reasons }) => ({ row, cells, reasons }))).toEqual([
      {
        row: 3,
        cells: ['g1', '2', '7', 'own 38', 'pass'],
        reasons: [expect.stringContaining('listed already in t.csv, row 2')],
      },
    ]);
    expect(reading.problems).toContainEqual(fault);
    expect(reading.rowsRead).toBe(reading.chart.size + reading.rejected.length + reading.leftOut);
  });
});

describe('a line without end', () => {
  it('is one rejected row, whole, and the rows after it keep their numbers', () => {
    const head = 'game,down,to_go,ball_on,play_kind,note\n';
    const long = `g1,1,10,own 35,run,${'x'.repeat(3_000_000)}`;
    const text = `${head}${long}\ng1,2,7,own 38,pass,ok\ng1,5,7,own 38,pass,ok\n`;
    const { chart, rejected, problems } = readSheet(
      { file: 's.csv', bytes: new TextEncoder().encode(text) },
      { kind: 'opponent' },
    );
    expect([...chart.rowOf]).toEqual([3]);
    expect(rejected.map(({ row }) => row)).toEqual([2, 4]);
    expect(rejected[0]?.cells.join(',')).toBe(long);
    expect(problems.map(({ rule }) => rule).join()).toMatch(/over a million characters/);
  });

  it('at the end of a file is rejected too', () => {
    const text = `game,down,to_go,ball_on,play_kind,note\ng1,2,7,own 38,pass,ok\ng1,1,10,own 35,run,${'x'.repeat(2_000_000)}`;
    const { chart, rejected } = readSheet(
      { file: 's.csv', bytes: new TextEncoder().encode(text) },
      { kind: 'opponent' },
    );
    expect([chart.size, rejected.map(({ row }) => row)]).toEqual([1, [3]]);
  });
});
