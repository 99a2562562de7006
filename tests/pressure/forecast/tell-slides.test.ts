import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { findTells } from '../../../src/pressure/forecast/tells.ts';
import { seenWords } from '../../../src/report/words/seen-words.ts';
import { plainGames, plantedSlides, type SlideTo } from './planted-slides.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const archive = filmFromRecords(Array.from({ length: 6 }, (_, i) => plainGames(`other ${i}`, 4)).flat());
const search = (chart: Film, behind: Film | null) => findTells(forecastFilm(chart, behind, cuts), chart, cuts).tells;

const WORDS: Readonly<Record<SlideTo, readonly string[]>> = {
  strength: ['trips', 'back weak'],
  field: ['trips', 'back weak'],
  back: ['trips', 'hash left'],
};

/** Seeds with a habit of 34 of 37 that is named under its own question from both words of its look. */
function named(to: SlideTo, behind: Film | null): string[] {
  const seeds = ['one', 'two', 'three'];
  return seeds.filter((seed) =>
    search(filmFromRecords(plantedSlides(seed, to)), behind).some(
      ({ target, follows, seen, standing }) =>
        target === `slide_to_${to}` &&
        follows === 'to' &&
        standing === 'plan_with' &&
        WORDS[to].every((words) => seenWords(seen).includes(words)),
    ),
  );
}

describe('a slide planted on 34 of 37 snaps of one look', () => {
  for (const to of ['strength', 'field', 'back'] as const) {
    it(`is named when it goes to the ${to}, own film alone`, () => {
      expect(named(to, null)).toEqual(['one', 'two', 'three']);
    });
    it(`is named when it goes to the ${to}, with an archive`, () => {
      expect(named(to, archive)).toEqual(['one', 'two', 'three']);
    });
  }
});
