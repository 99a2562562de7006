import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cannotWrite, writeAll } from '../../src/commands/write-out.ts';

describe('a result written into a file', () => {
  it('is written whole however little is taken at a time', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 200 }),
        fc.infiniteStream(fc.integer({ min: 1, max: 9 })),
        (bytes, steps) => {
          const written: number[] = [];
          writeAll(bytes, (all, from) => {
            const part = all.subarray(from, from + steps.next().value);
            written.push(...part);
            return part.length;
          });
          expect(written).toEqual([...bytes]);
        },
      ),
    );
  });

  it.each([0, 5])('is a failure when a full disk takes %i bytes and then nothing', (room) => {
    const full = (_: Uint8Array, from: number) => {
      if (from < room) return room - from;
      throw Object.assign(new Error('no space'), { code: 'ENOSPC' });
    };
    expect(() => writeAll(new Uint8Array(9), full)).toThrow('no space');
    expect(() => writeAll(new Uint8Array(9), (_, from) => Math.max(0, room - from))).toThrow('nothing more is taken');
  });

  it('says why in plain words', () => {
    expect(cannotWrite(Object.assign(new Error('x'), { code: 'ENOSPC' }))).toBe(
      'cannot write the result: the disk is full',
    );
    expect(cannotWrite(new Error('odd'))).toBe('cannot write the result: odd');
  });
});
