import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { pickedSeason, unzipSeason, zipSeason } from '../../src/desk/store/season-files.ts';

const zip = (files: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])));
const textsOf = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]));

describe('a season in a zip file', () => {
  it('comes back as it was handed over', () => {
    const files = new Map([
      ['defense.yaml', strToU8('calls: []\n')],
      ['week-01/opponent.csv', strToU8('game\r\none\r\n')],
    ]);
    const back = unzipSeason(zipSeason({ name: 'fall', files }), 'other');
    expect(back.name).toBe('fall');
    expect(textsOf(back.files)).toEqual(textsOf(files));
  });

  it('without a folder of its own is called as its file', () => {
    const season = unzipSeason(zip({ 'week-01/week.yaml': 'x', 'defense.yaml': 'y' }), 'fall');
    expect(season.name).toBe('fall');
    expect([...season.files.keys()].sort()).toEqual(['defense.yaml', 'week-01/week.yaml']);
  });

  it('leaves out ways out of its folder, hidden files, programs and the desk itself', () => {
    const season = unzipSeason(
      zip({
        'fall/week-01/week.yaml': 'opponent: x',
        'fall/../../escape.yaml': 'x',
        'fall/.hidden/week.yaml': 'x',
        'fall/week-01/run.exe': 'x',
        'fall/desk.html': 'x',
        '/week-02/week.yaml': 'x',
      }),
      'other',
    );
    expect(textsOf(season.files)).toEqual({ 'week-01/week.yaml': 'opponent: x' });
  });

  it.each([
    ['no zip file', strToU8('opponent: x'), 'not a zip file'],
    ['one that is cut off', zip({ 'week-01/week.yaml': 'x'.repeat(500) }).slice(0, 80), 'not a zip file'],
    ['one without a season', zip({ 'notes/a.txt': 'x' }), 'no season in it'],
    ['one that unpacks to far more', tooLarge(), 'far more than a season'],
  ])('says of %s what it is', (_, bytes, words) => {
    expect(() => unzipSeason(bytes, 'other')).toThrow(words);
  });
});

/** Ten files that each unpack to 50 MB. */
function tooLarge(): Uint8Array {
  const zeros = new Uint8Array(50_000_000);
  return zipSync(Object.fromEntries(Array.from({ length: 10 }, (_, i) => [`week-01/opponent-${i}.csv`, zeros])), {
    level: 1,
  });
}

it('a picked folder is read with its paths', async () => {
  const file = (path: string, text: string) =>
    Object.assign(new File([text], path.split('/').at(-1) ?? ''), { webkitRelativePath: path });
  const season = await pickedSeason([file('fall/week-01/week.yaml', 'x'), file('fall/week-01/photo.png', 'y')]);
  expect(season.name).toBe('fall');
  expect(textsOf(season.files)).toEqual({ 'week-01/week.yaml': 'x' });
});
