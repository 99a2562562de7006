import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import { review } from '../../src/commands/review.ts';
import { script } from '../../src/commands/script.ts';
import { createRandom } from '../../src/stats/random.ts';
import { COMMAND_PARTS, renamedSeason } from './command-parts.ts';
import { tryCommand } from './command-trial.ts';
import { withSeason } from './small-season.ts';

describe('a command with spoilt inputs ends in a result or in words, and writes nowhere else', () => {
  it.each(COMMAND_PARTS)('$name', async ({ name, perThousand, attempt }) => {
    for (let seed = 0; seed < Math.ceil(perThousand / 100); seed++) {
      const { what, outcome } = await attempt(createRandom(`${name} ${seed}`));
      expect(outcome.kind, `${what}\n${JSON.stringify(outcome)}`).not.toBe('bug');
    }
  });
});

describe('markup in every name', () => {
  const MARKUP = '<img src=x onerror=alert(1)>';
  const names = ['Harrow Creek', 'Larkmoor', 'Trips', 'Roof', 'three_deep'];

  it('stands on every page as text', async () => {
    const season = names.reduce((files, old) => renamedSeason(files, { old, name: MARKUP }), renamedSeason());
    await withSeason(season, async (folder) => {
      const week = join(folder, 'week-09');
      for (const command of [report, script, halftime, review]) {
        const run = (terminal: Parameters<typeof report>[2]) => command(week, {}, terminal);
        const outcome = await tryCommand({ season: folder, into: ['week-09/out/'], run });
        expect(['correct', 'faults named'], JSON.stringify(outcome)).toContain(outcome.kind);
      }
      const pages = readdirSync(join(week, 'out')).filter((name) => name.endsWith('.html'));
      expect(pages).toEqual(expect.arrayContaining(['report.html', 'script.html', 'halftime.html', 'review.html']));
      for (const page of pages) {
        const text = readFileSync(join(week, 'out', page), 'utf8');
        expect(text).not.toContain('<img src=x');
        if (page !== 'season.html') expect(text, page).toContain('&lt;img src=x onerror=alert(1)&gt;');
      }
    });
  });
});
