import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textAt } from '../../src/game/film.ts';
import { guardPasted } from '../../src/ingest/guard-pasted.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';

describe('pasted text that is kept', () => {
  it.each([
    ['=1+1,x\n', "'=1+1,x\n"],
    ['a\t@SUM(A1)\n', "a\t'@SUM(A1)\n"],
    ['a;-2+3;b\n', "a;'-2+3;b\n"],
    ['"=cmd()",1\n', '"\'=cmd()",1\n'],
    ['dn\r\n+3 yds\r\n', "dn\r\n'+3 yds\r\n"],
    ['a, =1+1\n', "a,' =1+1\n"],
    ['a;  +2+3\n', "a;'  +2+3\n"],
    ['a,"\t=1"\n', 'a,"\'\t=1"\n'],
    ['"\n=1+1",b\n', '"\'\n=1+1",b\n'],
    ['" \n @A1";b\n', '"\' \n @A1";b\n'],
    ['"\tword"\n', '"\'\tword"\n'],
    ['"note\n=1","-7"\n', '"note\n=1","-7"\n'],
    ['"open\n=1\n', '"open\n\'=1\n'],
    [',=1\n', ",'=1\n"],
    ['a\t\t=1\n', "a\t\t'=1\n"],
    ['\u2003=A1\n', "'\u2003=A1\n"],
    ['a, -7\n', 'a, -7\n'],
    ['-7,+3.5,-2,5\n', '-7,+3.5,-2,5\n'],
    ['own 35,a=b,x-y\n', 'own 35,a=b,x-y\n'],
  ])('%j becomes %j', (text, kept) => expect(guardPasted(text)).toBe(kept));

  it('is read as what was pasted', () => {
    const formation = fc.stringMatching(/^[=@+\-a-z][a-z0-9()+-]{0,6}$/);
    fc.assert(
      fc.property(fc.array(formation, { minLength: 1, maxLength: 5 }), (names) => {
        const text = `down,to_go,play_kind,formation\n${names.map((name) => `1,10,run,${name}\n`).join('')}`;
        const read = (kept: string) => {
          const { chart } = readSheet({ file: 'x.csv', bytes: Buffer.from(kept) }, { kind: 'opponent' });
          return Array.from({ length: chart.size }, (_, i) => textAt(chart, 'formation', i));
        };
        expect(read(guardPasted(text))).toEqual(read(text));
      }),
      { numRuns: 50 },
    );
  });
});
