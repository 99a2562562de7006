import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import type { FitChapter } from '../../src/pressure/fit/fit-result.ts';
import type { Review } from '../../src/pressure/review/review.ts';
import { mixMatrix } from '../../src/report/first/mix-matrix.ts';
import { drawChart } from '../../src/report/layout/draw-chart.ts';
import { gridMarkup } from '../../src/report/layout/grid.ts';
import { stripsMarkup } from '../../src/report/layout/strips.ts';
import { calibrationChart } from '../../src/report/review/calibration-chart.ts';
import { answerMatrix } from '../../src/report/view/answer-matrix.ts';
import type { ChartView } from '../../src/report/view/block.ts';
import { familyChart } from '../../src/report/view/family-chart.ts';
import { familySituationMatrix } from '../../src/report/view/family-situation-matrix.ts';
import { fitMatrix } from '../../src/report/view/fit-table.ts';
import { forecastChart } from '../../src/report/view/forecast-chart.ts';
import { guessChart } from '../../src/report/view/guess-chart.ts';
import { pairingChart } from '../../src/report/view/pairing-chart.ts';
import { protectionChart } from '../../src/report/view/protection-chart.ts';
import { raceChart } from '../../src/report/view/race-chart.ts';
import { raceCurveChart } from '../../src/report/view/race-curve-chart.ts';
import { seasonChart } from '../../src/report/view/season-chart.ts';
import { tellsChart } from '../../src/report/view/tells-chart.ts';
import { situationLabel } from '../../src/report/words/situation-label.ts';
import { normalCdf } from '../../src/stats/normal.ts';
import { share } from '../../src/stats/share.ts';
import { inventedPlan } from './invented-plan.ts';

// Every chart against the facts it is made from: where a datum is drawn, how long its interval is, in which order the
// rows stand and how dark a cell is. The scale is worked out here again: a strip runs from 7 to 293, a tint has five steps.
const plan = inventedPlan();
const all = (situation: string) => situation === 'all';

interface Drawn {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly second?: number | null;
}

const place = (value: number, [low, high]: readonly [number, number]) => 7 + (286 * (value - low)) / (high - low);

/** What a strip shows: the dot, both ends of the line, the diamond. */
function stripOf(svg: string) {
  const number = (pattern: RegExp) => Number(pattern.exec(svg)?.[1] ?? Number.NaN);
  return {
    value: number(/cx="([\d.]+)"/),
    low: number(/class="range[^"]*" d="M([\d.]+),/),
    high: number(/class="range[^"]*" d="M[\d.]+,10H([\d.]+)"/),
    second: number(/class="second" d="M([\d.]+),/),
  };
}

function strips(chart: ChartView) {
  if (chart.drawing?.kind !== 'strips') throw new Error(`${chart.id} draws no strips`);
  const { rows, axis } = chart.drawing;
  const page = parse(stripsMarkup(rows, axis).text);
  const drawn = page.querySelectorAll('.strip svg').map((svg) => stripOf(svg.outerHTML));
  return { drawn, domain: axis.domain, labels: rows.map(({ label }) => label) };
}

function expectStrips(chart: ChartView, facts: readonly Drawn[]): void {
  const { drawn, domain } = strips(chart);
  expect(drawn).toHaveLength(facts.length);
  facts.forEach((fact, i) => {
    for (const mark of ['value', 'low', 'high'] as const)
      expect(drawn[i]?.[mark], `${chart.id} ${i} ${mark}`).toBeCloseTo(place(fact[mark], domain), 0);
    if (fact.second == null) expect(drawn[i]?.second).toBeNaN();
    else expect(drawn[i]?.second).toBeCloseTo(place(fact.second, domain), 0);
    expect(drawn[i]?.low).toBeLessThan(drawn[i]?.high ?? 0);
  });
}

/** The tints of a matrix, row by row; null where a cell is hatched. */
function tints(chart: ChartView): (number | null)[][] {
  if (chart.drawing?.kind !== 'grid') throw new Error(`${chart.id} draws no matrix`);
  const page = parse(gridMarkup(chart.drawing.grid, '').text);
  const tintOf = (name: string | undefined) => (name === 'hatch' ? null : Number(name?.slice(1)));
  return page
    .querySelectorAll('tbody tr')
    .map((row) => row.querySelectorAll('td:not(.note)').map((cell) => tintOf(cell.getAttribute('class'))));
}

const tint = (value: number, darkest: number) => Math.min(4, Math.max(0, Math.ceil((4 * value) / darkest - 1e-9)));

describe('interval charts stand where their numbers are', () => {
  it('what they do with the ball', () => {
    const overall = plan.forecast.forecasts.find(({ target, situation }) => target === 'answer' && all(situation));
    const facts = (overall?.classes ?? []).map(({ share: value, low, high, film }) => ({
      value,
      low,
      high,
      second: film.estimate,
    }));
    expect(facts.length).toBeGreaterThan(3);
    expectStrips(forecastChart(plan), facts);
    const [most] = [...(overall?.classes ?? [])].sort((a, b) => b.share - a.share);
    expect(forecastChart(plan).title).toContain(`${Math.round(100 * (most?.share ?? 0))}% of snaps, then`);
  });

  it('the race, the call that is home most often first', () => {
    const facts = plan.protection.race
      .filter(({ answer }) => answer === 'dropback')
      .filter(({ call }) => plan.menu?.kind === 'menu' && plan.menu.calls.some((carried) => carried.call === call))
      .sort((a, b) => b.home - a.home)
      .map(({ home, low, high, typical }) => ({ value: home, low, high, second: typical }));
    expect(facts.length).toBeGreaterThan(2);
    expectStrips(raceChart(plan), facts);
  });

  it('the families, the best mean first, with zero where the base is', () => {
    const scores = plan.scores.families.filter(({ situation }) => all(situation));
    const facts = [...scores].sort((a, b) => b.points.mean - a.points.mean);
    const lines = facts.filter(({ points }) => points.low < points.high);
    const { drawn, domain } = strips(familyChart(plan));
    expect(drawn).toHaveLength(facts.length);
    expect(lines.length).toBeGreaterThan(5);
    facts.forEach(({ points }, i) => {
      expect(drawn[i]?.value).toBeCloseTo(place(points.mean, domain), 0);
      expect(drawn[i]?.low).toBeCloseTo(place(points.low, domain), 0);
      expect(drawn[i]?.high).toBeCloseTo(place(points.high, domain), 0);
    });
    const { rows } = familyChart(plan).table;
    expect(rows.map(({ key }) => key)).toEqual(facts.map(({ family }) => family));
    facts.forEach(({ family, chanceBetterThanBase }, i) => {
      if (family !== 'base') expect(rows[i]?.cells[2]?.value).toBe(chanceBetterThanBase);
    });
    const [low, high] = domain;
    expect([low <= 0, high > 0, facts.every(({ points }) => points.low >= low && points.high <= high)]).toEqual([
      true,
      true,
      true,
    ]);
  });

  it('how often our coverage is called, and what they do to protect', () => {
    const guesses = plan.ownFilm?.guesses ?? [];
    if (plan.ownFilm === null) throw new Error('the invented plan has our film');
    expectStrips(
      guessChart(plan.ownFilm),
      guesses.map(({ share: { estimate, low, high } }) => ({ value: estimate ?? 0, low, high })),
    );
    const { protectors, slideToBack, slideToField, slideToStrength, backJobs } = plan.protection.mix;
    const charted = [...protectors.map((one) => one.share), slideToBack, slideToField, slideToStrength];
    const facts = [...charted, ...backJobs.map((one) => one.share)];
    const { drawn, domain } = strips(protectionChart(plan.protection.mix));
    expect(drawn).toHaveLength(facts.length);
    facts.forEach(({ estimate, low, high }, i) => {
      expect(Number.isNaN(drawn[i]?.value)).toBe(estimate === null);
      if (estimate === null) return;
      expect(drawn[i]?.value).toBeCloseTo(place(estimate, domain), 0);
      expect(drawn[i]?.low).toBeCloseTo(place(low, domain), 0);
      expect(drawn[i]?.high).toBeCloseTo(place(high, domain), 0);
    });
  });

  it('what a reader gains says its points and its range, low end first', () => {
    if (plan.ownFilm === null) throw new Error('the invented plan has our film');
    const known = plan.ownFilm.guesses.filter(({ gain }) => gain !== null);
    const { rows } = guessChart(plan.ownFilm).table;
    const minus = (value: number) => String(Math.round(100 * value)).replace('-', '\u2212');
    expect(known.length).toBeGreaterThan(0);
    for (const { gain, share: right } of known) {
      if (gain === null) continue;
      const row = rows.find(({ cells }) => cells[0]?.value === right.estimate);
      const sign = gain.difference > 0 ? '+' : '';
      expect(row?.cells.at(-1)?.text).toBe(
        `${sign}${minus(gain.difference)} points (${minus(gain.low)} to ${minus(gain.high)})`,
      );
    }
  });

  it('the season game by game: Sunday’s range against what came, thin under 20 snaps', () => {
    const check = (snaps: number, came: number, [low, high]: readonly [number, number]) => ({
      target: 'run_or_pass' as const,
      situation: 'all',
      snaps,
      came,
      expected: 0.45,
      outer: { low, high, hit: came >= low && came <= high, chance: 0.95 },
    });
    const checks = [check(50, 27, [18, 31]), check(12, 2, [3, 9])];
    const reviews = checks.map((one, i) => ({ week: `week-0${i}`, opponent: 'Larkmoor', counts: [one] }));
    const chart = seasonChart(reviews as unknown as Review[]);
    expectStrips(
      chart,
      checks.map(({ snaps, came, expected, outer }) => ({
        value: expected,
        low: outer.low / snaps,
        high: outer.high / snaps,
        second: came / snaps,
      })),
    );
    expect(chart.title).toContain('1 of 2 times');
    const rows = chart.drawing?.kind === 'strips' ? chart.drawing.rows : [];
    expect(rows.map(({ state }) => state)).toEqual(['solid', 'thin']);
  });

  it('forecasts of a size and how often they came', () => {
    const bins = [
      { low: 0, high: 0.2, forecast: 0.13, came: share(6, 50) },
      { low: 0.2, high: 0.4, forecast: 0.31, came: share(22, 40) },
    ];
    const facts = bins.map(({ forecast, came }) => ({
      value: came.count / came.trials,
      low: came.low,
      high: came.high,
      second: forecast,
    }));
    expectStrips(calibrationChart(bins), facts);
  });
});

describe('a darker cell is a larger number', () => {
  it('answers by situation: the darkest tint from 45% on', () => {
    const cells = plan.forecast.forecasts.filter(
      ({ target, situation, ownSnaps }) => target === 'answer' && !all(situation) && ownSnaps > 0,
    );
    const facts = cells.map(({ classes }) => classes.map(({ share: value }) => tint(value, 0.45)));
    expect(new Set(facts.flat()).size).toBeGreaterThan(2);
    expect(tints(answerMatrix(plan))).toEqual(facts);
  });

  it('tells game by game: hatched where the look was not shown', () => {
    const { tells } = plan.forecast.tells;
    const games = [...new Set(tells.flatMap((tell) => tell.games.map(({ game }) => game)))];
    const facts = tells.map((tell) =>
      games.map((name) => {
        const found = tell.games.find(({ game }) => game === name);
        return found === undefined || found.trials === 0 ? null : tint(found.count / found.trials, 1);
      }),
    );
    expect(facts.flat()).toContain(null);
    expect(tints(tellsChart(plan))).toEqual(facts);
  });

  it('coverages behind a path: by their share of the path', () => {
    if (plan.ownFilm === null) throw new Error('the invented plan has our film');
    const { pairings } = plan.ownFilm;
    const coverages = [...new Set(pairings.flatMap((pairing) => pairing.coverages.map(({ coverage }) => coverage)))];
    const facts = pairings.map((pairing) =>
      coverages.map((name) => {
        const found = pairing.coverages.find(({ coverage }) => coverage === name);
        return tint(found === undefined ? 0 : found.share.count / found.share.trials, 1);
      }),
    );
    expect(new Set(facts.flat()).size).toBeGreaterThan(1);
    expect(tints(pairingChart(plan.ownFilm))).toEqual(facts);
  });

  it('families by situation: points saved, never darker for a loss', () => {
    const scores = plan.scores.families.filter(({ situation, family }) => !all(situation) && family !== 'base');
    const situations = plan.scores.situations.filter(({ id }) => !all(id)).map(({ id }) => id);
    const families = [...new Set(scores.map(({ family }) => family))];
    const facts = situations.map((id) =>
      families.map((name) => {
        const found = scores.find(({ family, situation }) => family === name && situation === id);
        return found === undefined ? null : tint(found.points.mean, 1);
      }),
    );
    expect(new Set(facts.flat()).size).toBeGreaterThan(1);
    expect(tints(familySituationMatrix(plan))).toEqual(facts);
  });

  it('fit by situation: right less wrong, the family that fits best first', () => {
    const situations = plan.scores.situations.filter(({ id, expectedSnaps }) => !all(id) && expectedSnaps >= 0.3);
    const nets: Readonly<Record<string, number>> = { hot: 0.31, peel: 0.12, zero: -0.2 };
    const net = (family: string, id: string) => (nets[family] ?? 0) + (id.startsWith('third') ? 0.2 : 0);
    const families = Object.keys(nets)
      .reverse()
      .flatMap((family) =>
        ['all', ...situations.map(({ id }) => id)].map((situation) => ({
          family,
          situation,
          net: { mean: net(family, situation), low: 0, high: 0 },
        })),
      );
    const chart = fitMatrix(plan, { families, calls: [] } as unknown as FitChapter);
    const facts = situations.map(({ id }) => ['hot', 'peel', 'zero'].map((family) => tint(net(family, id), 0.5)));
    expect(new Set(facts.flat()).size).toBeGreaterThan(2);
    expect(tints(chart)).toEqual(facts);
  });

  it('what to call: each cell says its own share, the darkest from 60% on, and marks the calls most made', () => {
    const { menu } = plan;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const page = parse(mixMatrix(plan, menu).text);
    const rows = page.querySelectorAll('tbody tr');
    expect(rows.length).toBeGreaterThan(2);
    for (const row of rows) {
      const label = row.querySelector('th')?.text;
      const id = menu.situations.find((one) => situationLabel(one.id) === label)?.id;
      for (const cell of row.querySelectorAll('td[data-label]').slice(1)) {
        const call = menu.calls.find((one) => one.call === cell.getAttribute('data-label'));
        const fact = call?.mix.find(({ situation }) => situation === id)?.share ?? Number.NaN;
        expect(cell.text).toBe(`${Math.round(100 * fact)}%`);
        expect(cell.getAttribute('class')?.split(' ')[0]).toBe(`t${tint(fact, 0.6)}`);
      }
      const cells = row.querySelectorAll('td[data-label]').slice(1);
      const most = Math.max(...cells.map((cell) => Number.parseInt(cell.text, 10)));
      const marked = cells.filter((cell) => cell.classList.contains('most'));
      expect(marked.map(({ text }) => text)).toEqual(
        cells.filter(({ text }) => text === `${most}%`).map(({ text }) => text),
      );
    }
  });

  it('what to call: calls made equally often are all marked', () => {
    const { menu } = plan;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const id = menu.situations[0]?.id ?? '';
    const shares = [0.09, 0.091, 0.03];
    const pressures = menu.calls.filter(({ family }) => family !== 'base');
    const calls = pressures.map((call, i) => ({ ...call, mix: [{ situation: id, share: shares[i] ?? 0 }] }));
    const row = parse(mixMatrix(plan, { ...menu, calls }).text).querySelector('tbody tr');
    expect(row?.querySelectorAll('td.most').map(({ text }) => text)).toEqual(['9%', '9%']);
  });
});

describe('the race as curves', () => {
  it('draws balls held by the curve, the first man at his time, and tints from him on', async () => {
    const svg = await drawChart(raceCurveChart(plan));
    const at = (seconds: number) => (270 * seconds) / 6;
    const carried = plan.menu?.kind === 'menu' ? plan.menu.calls.map(({ call }) => call) : [];
    const [best] = plan.protection.race
      .filter(({ answer, call }) => answer === 'dropback' && carried.includes(call))
      .sort((a, b) => b.home - a.home);
    const arrival = best?.firstArrival ?? Number.NaN;
    const rule = /<line transform="translate\(([\d.]+),0\)" x2="0" y2="190" stroke="var\(--ink\)"/.exec(svg);
    expect(Number(rule?.[1])).toBeCloseTo(at(arrival), 0);
    expect(svg).toMatch(/<path d="M[^"]*Z" fill="var\(--tint4\)"/);
    const [area, solid, dashed] = [...svg.matchAll(/<path d="(M[\d.]+,[\d.]+(?:L[\d.]+,[\d.]+){9,})/g)].map(
      ([, d = '']) => [...d.matchAll(/[ML]([\d.]+),([\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) })),
    );
    expect(Math.min(...(area ?? []).map(({ x }) => x))).toBeCloseTo(at(arrival), 0);
    expect(Math.max(...(area ?? []).map(({ x }) => x))).toBeCloseTo(270, 0);
    for (const [answer, curve] of [
      ['dropback', solid],
      ['quick', dashed],
    ] as const) {
      const fact = plan.protection.release.find((one) => one.answer === answer);
      const held = (seconds: number) => 1 - normalCdf((Math.log(seconds) - (fact?.mu ?? 0)) / (fact?.sigma ?? 1));
      for (const seconds of [1, 2, 3, 4]) {
        const point = curve?.find(({ x }) => Math.abs(x - at(seconds)) < 0.1);
        expect(point?.y, `${answer} at ${seconds} s`).toBeCloseTo(190 * (1 - held(seconds)), 0);
      }
    }
  });
});
