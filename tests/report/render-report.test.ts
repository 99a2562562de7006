import { describe, expect, it } from 'vitest';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { HOSTILE_NAMES, hostilePlan } from './hostile-plan.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const page = await renderReport(plan);

describe('renderReport', () => {
  it('gives the same bytes for the same plan', async () => {
    expect(await renderReport(inventedPlan())).toBe(page);
  });

  it('holds every chapter in the order of the contents bar', () => {
    const sections = [...page.matchAll(/<section id="([^"]+)"/g)].map((match) => match[1]);
    const links = [...page.matchAll(/<li><a href="#([^"]+)">/g)].map((match) => match[1]);
    expect(sections).toEqual(links);
    expect(sections[0]).toBe('short-version');
    expect(sections.at(-1)).toBe('cautions');
  });

  it('says the sentences of the plan first', () => {
    for (const sentence of plan.shortVersion) expect(page).toContain(`<li>${sentence}</li>`);
    expect(page.indexOf(plan.shortVersion[0] ?? '?')).toBeLessThan(page.indexOf('<table'));
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
    expect(without).toContain('No call library was given');
    expect(without).toContain('The kinds of pressure to prefer');
  });

  it('whose limits clash names those that do', async () => {
    const clash = await none({ menu: { kind: 'infeasible', clashing: ['120 repetitions', 'two-deep zone'] } });
    expect(clash).toContain('<li>120 repetitions</li><li>two-deep zone</li>');
  });

  it('without our own film says what it would have shown', async () => {
    expect(await none({ ownFilm: null })).toContain('With ours.csv the tool says what our paths give away');
  });

  it('without a tell says so once and draws no empty frame', async () => {
    const { forecast } = plan;
    const quiet = await none({ forecast: { ...forecast, tells: { looked: 12390, discoveryRate: 0.1, tells: [] } } });
    expect(quiet).toContain('12,390 habits were looked at; 0 stood out');
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
    for (const id of ['forecast-overall', 'answers-by-situation', 'race', 'race-curves', 'families-overall']) {
      const figure = figures.find((match) => match[1] === id)?.[2] ?? '';
      expect(figure).toContain('nothing is drawn');
      expect(figure).not.toContain('<figcaption');
      expect(figure).not.toContain('<svg');
    }
  });

  it('is complete without the page script', () => {
    expect(page).not.toContain('<script');
    for (const call of plan.menu?.kind === 'menu' ? plan.menu.calls : [])
      expect(page).toContain(`<bdi>${call.call}</bdi>`);
  });
});

describe('on a phone', () => {
  it('the table of calls to carry keeps its headings beside the words, and no other table does', () => {
    const tables = [...page.matchAll(/<table id="([^"]+)" class="cards-on-phone">(.*?)<\/table>/gs)];
    expect(tables.map((match) => match[1])).toEqual(['carry']);
    const headings = [...(tables[0]?.[2] ?? '').matchAll(/<th scope="col"[^>]*>([^<]+)/g)].map((match) => match[1]);
    const row = /<tr[^>]*><th scope="row">.*?<\/tr>/s.exec(tables[0]?.[2] ?? '')?.[0] ?? '';
    expect([...row.matchAll(/data-label="([^"]+)"/g)].map((match) => match[1])).toEqual(headings.slice(1));
    expect(headings.length).toBeGreaterThan(3);
  });
});

describe('soundness on the page', () => {
  const fault = { call: 'Rake Roof', role: null, rule: 'flat', words: 'nobody has the near flat' };
  const withFaults = (soundness: (typeof fault & { declared: boolean })[]) =>
    renderReport({ ...plan, protection: { ...plan.protection, soundness } });

  it('leaves what nobody declared in sight and folds away what was declared', async () => {
    const both = await withFaults([
      { ...fault, declared: true },
      { ...fault, words: 'nobody has the far flat', declared: false },
    ]);
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
