// Scores under halved and doubled judgement weight, for every scenario and the demo week: npx tsx scripts/sensitivity.ts
// Prints points saved per ten snaps by family, and which of a coordinator's expectations still hold.
import { diskWeek } from '../src/commands/disk-season.ts';
import { FAMILIES } from '../src/game/vocabulary.ts';
import type { WeekSettings } from '../src/game/week-settings.ts';
import { forecastWeek } from '../src/pressure/forecast/forecast.ts';
import { protectionChapter } from '../src/pressure/protection/protection-chapter.ts';
import { readWeek } from '../src/season/read-week.ts';
import { readSeasonFolder } from '../src/season/season-folder.ts';
import { inventedSettings } from '../tests/pressure/invented-offense.ts';
import { type ExpectedScores, expectedScores, racedInput } from '../tests/pressure/score/expected-scores.ts';
import { SCENARIOS, scenarioChart } from '../tests/pressure/score/scenario/scenarios.ts';

const FACTORS = [0.5, 1, 2];

console.log('Points saved per ten snaps against the four-man base, by what the judgement weighs.\n');
console.log(`| offense | judgement | ${FAMILIES.slice(1).join(' | ')} | expectations that fail |`);
console.log(
  `| --- | --- | ${FAMILIES.slice(1)
    .map(() => '---:')
    .join(' | ')} | --- |`,
);
for (const scenario of SCENARIOS) {
  const chart = scenarioChart(scenario);
  for (const factor of FACTORS) {
    const scores = expectedScores(racedInput({ chart, settings: weighed(inventedSettings(), factor) }));
    const failed = scenario.expected.filter(({ holds }) => !holds(scores)).map(({ words }) => words);
    printRow(`${scenario.id} | x${factor}`, scores, failed);
  }
}

const week = await readWeek(await readSeasonFolder(diskWeek('data/demo/season/week-09')));
const forecast = forecastWeek({ ...week, seed: week.settings.seed });
const seen = { ...week, forecast, seed: week.settings.seed };
const protection = protectionChapter(seen);
for (const factor of FACTORS) {
  const settings = weighed(week.settings, factor);
  printRow(`demo week | x${factor}`, expectedScores({ ...seen, settings, protection }), []);
}

function weighed(settings: WeekSettings, factor: number): WeekSettings {
  const { weights } = settings;
  return { ...settings, weights: { ...weights, judgement_snaps: factor * weights.judgement_snaps } };
}

function printRow(name: string, scores: ExpectedScores, failed: readonly string[]): void {
  const points = FAMILIES.slice(1).map((family) => `${scores[family] >= 0 ? '+' : ''}${scores[family].toFixed(2)}`);
  console.log(`| ${name} | ${points.join(' | ')} | ${failed.join('; ') || 'none'} |`);
}
