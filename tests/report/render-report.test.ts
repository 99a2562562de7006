import { describe, expect, it } from 'vitest';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import type { SoundnessFault } from '../../src/pressure/soundness/fault.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { percent } from '../../src/report/words/percent.ts';
import { situationLabel } from '../../src/report/words/situation-label.ts';
import { HOSTILE_NAMES, hostilePlan } from './hostile-plan.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const page = await renderReport(plan);

/** The order of a coach's questions; a chapter without facts is left out. */
const CHAPTERS = [
  'calls',
  'what-they-do',
  'when-pressured',
  'how-they-protect',
  'fit',
  'our-film',
  'practice',
  'how-do-you-know',
];

describe('renderReport', () => {
  it('gives the same bytes for the same plan', async () => {
    expect(await renderReport(inventedPlan())).toBe(page);
  });

  it('holds every chapter in the order of a coach’s questions, named in the contents bar', () => {
    const sections = [...page.matchAll(/<section id="([^"]+)"/g)].map((match) => match[1]);
    const links = [...page.matchAll(/<li><a href="#([^"]+)">/g)].map((match) => match[1]);
    expect(sections).toEqual(CHAPTERS.filter((id) => sections.includes(id)));
    for (const id of ['calls', 'what-they-do', 'how-they-protect', 'our-film', 'how-do-you-know'])
      expect(sections).toContain(id);
    expect(links).toEqual(sections);
  });

  it('answers on the first screen: what we call where, from which side, why, what to stay out of, how we look', () => {
    const first = /<section class="first".*?<\/section>/s.exec(page)?.[0] ?? '';
    for (const head of [
      'Call it like this',
      'Why',
      'What makes them different',
      'Stay out of',
      'How we look',
      'How sure',
    ])
      expect(first).toContain(`<h2>${head}</h2>`);
    expect(first).toContain('▸ ');
    expect(first).not.toMatch(/log loss|\bp \d|posterior|draws/);
  });

  it('keeps everything of method closed, and opens it with --full', async () => {
    expect(page).not.toContain('<details open>');
    const full = await renderReport(plan, { full: true });
    expect(full).not.toContain('<details>');
    expect(full.replaceAll('<details open>', '<details>')).toBe(page);
  });

  it('names no outside address', () => {
    expect(page).not.toMatch(/(?:src|href|url)\s*[=(]\s*["']?(?:https?:|\/\/)/);
  });

  it('says that invented data are invented, and says nothing of the kind about real ones', async () => {
    expect(page).toContain('Invented demonstration data');
    const real = await renderReport({ ...plan, film: { ...plan.film, invented: false } });
    expect(real).not.toContain('Invented demonstration data');
  });

  it('has unique ids and no link into nothing', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, target] of page.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(target);
  });

  it('never writes a value that is not one', () => {
    expect(page).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});

describe('a plan with parts missing', () => {
  const none = (changes: Partial<WeekPlan>) => renderReport({ ...plan, ...changes });

  it('without a call library says that there is no menu and ranks the families instead', async () => {
    const without = await none({ menu: null, library: null });
    expect(without).toContain('No call library (defense.yaml)');
    expect(without).not.toContain('id="mix"');
  });

  it('names the new calls under the mix, and nothing where none is new', async () => {
    const { menu } = plan;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const withNew = (names: readonly string[]) =>
      none({ menu: { ...menu, calls: menu.calls.map((call) => ({ ...call, isNew: names.includes(call.call) })) } });
    const [first] = menu.calls;
    expect(await withNew([first?.call ?? ''])).toContain(`practice reps. New, to be installed: ${first?.call}.`);
    expect(await withNew([])).not.toContain('to be installed');
  });

  it('names the limits that clash', async () => {
    const clash = await none({
      menu: {
        kind: 'infeasible',
        clashing: [
          { kind: 'reps', limit: 120 },
          { kind: 'theory', of: 'two_deep' },
        ],
        notes: [],
      },
    });
    expect(clash).toContain('<li>at most 120 practice reps</li><li>one call of two-deep zone</li>');
  });

  it('without our own film says what it would have shown', async () => {
    expect(await none({ ownFilm: null })).toContain('Add ours.csv to see what our paths give away');
  });

  it('without a tell says so once and draws no empty frame', async () => {
    const { forecast } = plan;
    const quiet = await none({ forecast: { ...forecast, tells: { looked: 12390, discoveryRate: 0.1, tells: [] } } });
    expect(quiet).toContain('12,390 patterns checked');
    expect(quiet).not.toContain('id="tells-by-game"');
    expect(page).toContain('id="tells-by-game"');
  });

  it('without any forecast, score or race draws nothing and says so for each chart', async () => {
    const { forecast, scores, protection } = plan;
    const empty = await none({
      forecast: { ...forecast, forecasts: [], tells: { ...forecast.tells, tells: [] }, backtest: null },
      scores: { ...scores, families: [], zones: [], calls: [], disagreements: [] },
      protection: { ...protection, calls: [], race: [], release: [], soundness: [] },
      menu: null,
      library: null,
      ownFilm: null,
    });
    expect(empty).not.toMatch(/NaN|Infinity|undefined|\[object/);
    const figures = [...empty.matchAll(/<figure id="([^"]+)">(.*?)<\/figure>/gs)];
    expect(figures.length).toBeGreaterThan(4);
    for (const [, , figure = ''] of figures.filter(([, id]) => id !== 'protection-habits')) {
      expect(figure).toContain('nothing is drawn');
      expect(figure).not.toContain('<figcaption');
      expect(figure).not.toContain('<svg');
    }
  });

  it('is complete without the page script', () => {
    expect(page).not.toContain('<script');
    const calls = plan.menu?.kind === 'menu' ? plan.menu.calls : [];
    for (const { call } of calls) expect(page).toContain(`<bdi>${call}</bdi> ▸`);
  });
});

describe('the mix', () => {
  it('says every share of the menu in its row and column, base first', () => {
    const table = /<table class="mix".*?<\/table>/s.exec(page)?.[0] ?? '';
    const heads = [...table.matchAll(/<th scope="col"><bdi>([^<]+)/g)].map((match) => match[1] ?? '');
    expect(heads[0]).toBe('Base');
    const menu = plan.menu;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const rows = [...table.matchAll(/<tr><th scope="row">([^<]+)<\/th>(.*?)<\/tr>/gs)];
    expect(rows.length).toBeGreaterThan(4);
    for (const [, label, cells = ''] of rows) {
      const id = menu.situations.find((situation) => situationLabel(situation.id) === label)?.id;
      const written = [...cells.matchAll(/<td[^>]*>([^<]*)<\/td>/g)].map((match) => match[1] ?? '');
      expect(written).toHaveLength(heads.length);
      heads.slice(1).forEach((call, k) => {
        const share =
          menu.calls.find((entry) => entry.call === call)?.mix.find(({ situation }) => situation === id)?.share ?? 0;
        expect(written[k + 1]).toBe(share < 0.005 ? '' : percent(share));
      });
    }
  });
});

describe('soundness on the page', () => {
  const flat = (side: 'near' | 'far', declared: boolean): SoundnessFault => ({
    call: 'Rake Roof',
    role: null,
    failure: { kind: 'flat_open', side },
    declared,
  });
  const withFaults = (soundness: readonly SoundnessFault[]) =>
    renderReport({ ...plan, protection: { ...plan.protection, soundness } });

  it('leaves what nobody declared in sight and folds away what was declared', async () => {
    const both = await withFaults([flat('near', true), flat('far', false)]);
    expect(both).toMatch(/id="soundness-table"(?:(?!<\/table>).)*far flat/s);
    expect(both).toMatch(/Left open on purpose, as declared in defense.yaml \(1 place\).*near flat/s);
    expect(await withFaults([])).not.toContain('Left open on purpose');
  });
});

describe('hostile names', () => {
  it('stay text in the page and its drawings', async () => {
    const hostile = await renderReport(hostilePlan(), { script: 'void 0' });
    expect(hostile.match(/<script/g)).toHaveLength(1);
    expect(hostile).not.toContain('<img');
    expect(hostile).not.toContain('\u202e');
    expect(hostile).toContain('&lt;/script&gt;&lt;script&gt;alert(1)');
    expect(hostile).toContain(HOSTILE_NAMES.call);
    expect(hostile).not.toMatch(/NaN|undefined/);
  });
});

describe('size', () => {
  it('stays under 400 KB for a plan of demo size', () => {
    expect(page.length).toBeLessThan(400 * 1024);
  });
});
