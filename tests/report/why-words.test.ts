import { describe, expect, it } from 'vitest';
import type { CallFit, FitChapter } from '../../src/pressure/fit/fit-result.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { whyStatements } from '../../src/report/words/why-words.ts';
import { share } from '../../src/stats/share.ts';
import { inventedPlan } from './invented-plan.ts';

const spread = (mean: number) => ({ mean, low: mean, high: mean });
const plan = inventedPlan();
const pressures = plan.menu?.kind === 'menu' ? plan.menu.calls.filter(({ family }) => family !== 'base') : [];
const byUse = [...pressures].sort((a, b) => b.expectedCalls - a.expectedCalls);
const fitOf = (nets: readonly number[], unknown = 0): FitChapter => ({
  ...({} as FitChapter),
  families: [],
  calls: byUse.map(
    ({ call, family }, i): CallFit => ({
      call,
      family,
      situation: 'all',
      right: spread(0.3 + (nets[i] ?? -1) / 2),
      wrong: spread(0.3 - (nets[i] ?? -1) / 2),
      neutral: spread(0.4),
      net: spread(nets[i] ?? -1),
      unknown,
    }),
  ),
});
const first = (fit: FitChapter) => whyStatements({ ...plan, fit } as WeekPlan)[0]?.words;

describe('the first reason for the calls', () => {
  it('is the most called pressure that is right plainly more often than wrong', () => {
    expect(byUse.length).toBeGreaterThan(1);
    expect(first(fitOf([-0.2, 0.2]))).toBe(
      `Over all their snaps ${byUse[1]?.call} is right on 4.0, wrong on 2.0 of 10.`,
    );
  });

  it('never praises a call that is wrong as often as right', () => {
    expect(first(fitOf([0.02, 0.01]))).toBe(
      'No pressure we carry is right plainly more often than wrong; the mix spreads them.',
    );
  });

  it('says how much cannot be judged where little is charted', () => {
    expect(first(fitOf([0], 0.6))).toContain(`6.0 of 10 snaps with ${byUse[0]?.call} can’t be judged`);
  });
});

it('marks a slide and a job of the back as thin where fewer than 20 passes carry the column', () => {
  const { mix } = plan.protection;
  const backJobs = [{ job: 'blocks', share: share(5, 9) }] as const;
  const thin = { ...plan.protection, mix: { ...mix, slideToBack: share(1, 6), backJobs } };
  const words = whyStatements({ ...plan, protection: thin } as WeekPlan).map((statement) => statement.words);
  expect(words).toContain('They slide away from the back on 5 of 6 (83%), thin: lean to the back.');
  expect(words).toContain('The back stays in to block on 5 of 9 (56%) of their charted passes, thin.');
});

describe('what to expect on Friday', () => {
  it('gives the low and the high count of each answer, in that order', () => {
    const overall = plan.forecast.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
    const runs = overall?.expected.find(({ name }) => name === 'run');
    const words = whyStatements(plan).map((statement) => statement.words);
    expect(runs && runs.low < runs.high).toBe(true);
    expect(words.some((line) => line.includes(`expect ${runs?.low}-${runs?.high} runs`))).toBe(true);
  });
});
