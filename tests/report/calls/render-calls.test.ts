import { describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import { checkLibrary } from '../../../src/pressure/soundness/soundness.ts';
import { askedMen } from '../../../src/report/calls/call-asks.ts';
import { renderCalls } from '../../../src/report/render-calls.ts';
import { demoCall, demoDefense } from '../../pressure/demo-defense.ts';

const page = (library: CallLibrary) => renderCalls(library, checkLibrary(library));

describe('the page of calls', () => {
  it('draws every call once, under its family, and says what it is made of', async () => {
    const text = await page(demoDefense);
    expect(text.match(/<svg class="field"/g)).toHaveLength(demoDefense.calls.length);
    for (const { name, coverage } of demoDefense.calls) {
      expect(text).toContain(`<h3><bdi>${name}</bdi></h3>`);
      expect(text).toContain(coverage);
    }
    expect(text).toContain('28 calls on 14 paths. Every call is sound.');
    expect(text).toContain('Three-under (three-deep zone) · path latch, from the field · three deep · 12 reps a week');
    expect(text).toContain('not taught yet: 20 reps to install');
  });

  it('says what each call asks of each of our eleven', () => {
    const asked = askedMen(demoDefense, demoCall('Hackle Extra'));
    expect(asked).toHaveLength(11);
    expect(Object.fromEntries(asked.map(({ title, job }) => [title, job]))).toMatchObject({
      Nickel: 'rush near D, peel with the back',
      'Middle safety': 'join through near B when the back blocks',
      'Boundary safety': 'man 2 far, adds when his man blocks',
    });
    expect(askedMen(demoDefense, demoCall('Cross Roof')).find(({ title }) => title === 'Will')?.job).toBe(
      'loop to near A',
    );
  });

  it('counts in how many calls each man is asked for each job', async () => {
    const text = await page(demoDefense);
    const row = /<th scope="row"><bdi>Nose<\/bdi><\/th>(.*?)<\/tr>/s.exec(text)?.[1] ?? '';
    const rushes = demoDefense.calls.filter(({ rush }) => rush.some(({ role }) => role === 'nose')).length;
    expect([...row.matchAll(/>(\d+)</g)].map(([, n]) => Number(n))).toEqual([rushes, 0, 0, 0, 0, 0]);
  });

  it('names what is not sound, and what is given on purpose', async () => {
    const call = {
      ...demoCall('Latch Lock'),
      cover: demoCall('Latch Lock').cover.filter(({ role }) => role !== 'will'),
    };
    const text = await page({ ...demoDefense, calls: [call] });
    expect(text).toContain('1 of 1 not sound');
    expect(text).toMatch(/<b>Not sound: Will has no job.*<\/b> On purpose: nobody has the quarterback when he runs\./);
    expect(text).toMatch(/Hot<\/th><td><\/td><td class="n">0<\/td><td>no call/);
  });

  it('is one file: no script, nothing from outside, names stay text', async () => {
    const call = { ...demoCall('Latch Lock'), name: '<img src=x>' };
    const text = await page({ ...demoDefense, calls: [call] });
    expect(text).not.toMatch(/<script|<img|https?:/);
    expect(text).toContain('&lt;img src=x&gt;');
  });
});
