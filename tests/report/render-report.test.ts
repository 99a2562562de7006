import { describe, expect, it } from 'vitest';
import { renderReport } from '../../src/report/render-report.ts';
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
