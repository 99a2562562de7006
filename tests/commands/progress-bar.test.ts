import { describe, expect, it } from 'vitest';
import { progressBar } from '../../src/commands/progress-bar.ts';

/** A bar on a clock that stands where it is put. */
function watched() {
  const clock = { now: 0 };
  const lines: string[] = [];
  const terminal = {
    out: () => undefined,
    note: () => undefined,
    progress: (line: string) => void lines.push(line),
    today: '',
  };
  return { clock, lines, bar: progressBar('Working', terminal, () => clock.now) };
}

describe('progressBar', () => {
  it('says nothing in the first second, nor wipes what it did not draw', () => {
    const { clock, lines, bar } = watched();
    for (clock.now = 0; clock.now < 990; clock.now += 10) bar.step(clock.now, 1000);
    bar.end();
    expect(lines).toEqual([]);
  });

  it('then shows how much is done, ten times a second at most, and wipes the line', () => {
    const { clock, lines, bar } = watched();
    for (clock.now = 0; clock.now <= 2000; clock.now += 10) bar.step(clock.now, 4000);
    bar.end();
    expect(lines[0]).toBe(`Working [${'#'.repeat(8)}${'.'.repeat(22)}] 25%`);
    expect(lines).toHaveLength(12);
    expect(lines.at(-1)).toBe('');
  });
});
