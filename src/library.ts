/**
 * What other programs may use: counts with intervals and tests, sheets read into charts, and the football on top of
 * them. Chosen by hand; everything else may change from one version to the next.
 *
 * @module
 */

export type { Call, CallLibrary, Role } from './game/call-library.ts';
export type { ColumnName } from './game/columns.ts';
export type { Film, SnapRecord } from './game/film.ts';
export { filmFromRecords, filterSnaps, joinFilms, numberAt, textAt } from './game/film.ts';
export { SITUATIONS } from './game/situations.ts';
export type { WeekSettings } from './game/week-settings.ts';
export { readSheet } from './ingest/read-sheet.ts';
export type { RowProblem } from './ingest/row-problem.ts';
export { describeProblem } from './ingest/row-problem.ts';
export { readCallLibrary, readWeekSettings } from './ingest/settings-text.ts';
export type { SheetOptions, SheetReading } from './ingest/sheet-reading.ts';
export { toCsv } from './ingest/write-csv.ts';
export { compareCharts } from './pressure/chart-comparison/compare-charts.ts';
export { forecastWeek } from './pressure/forecast/week/forecast.ts';
export type { HalftimeInput } from './pressure/halftime/halftime.ts';
export { halftimeUpdate } from './pressure/halftime/halftime.ts';
export { filmChapter } from './pressure/plan/film-chapter.ts';
export { planWeek } from './pressure/plan/plan-week.ts';
export type { WeekPlan } from './pressure/plan/week-plan.ts';
export { arrivalSeconds } from './pressure/protection/arrival.ts';
export { sprintProfile, sprintSeconds, sprintYards } from './pressure/protection/sprint.ts';
export { answerOf } from './pressure/snap/answer.ts';
export { situationOf } from './pressure/snap/situation.ts';
export { tendencyOf } from './pressure/snap/tendency.ts';
export { checkLibrary } from './pressure/soundness/soundness.ts';
export { benjaminiHochberg } from './stats/adjust.ts';
export { betaBinomialInterval } from './stats/beta-binomial.ts';
export { newcombeDifference } from './stats/difference.ts';
export { entropy } from './stats/entropy.ts';
export { StatsInputError } from './stats/errors.ts';
export { fisherExact } from './stats/fisher.ts';
export { goodmanIntervals } from './stats/goodman.ts';
export type { Interval } from './stats/interval.ts';
export { kaplanMeier } from './stats/kaplan-meier.ts';
export { cohenKappa } from './stats/kappa.ts';
export { solveMatrixGame } from './stats/matrix-game.ts';
export { clopperPearsonInterval, jeffreysInterval, wilsonInterval } from './stats/proportion-interval.ts';
export { createRandom } from './stats/random.ts';
export type { Share } from './stats/share.ts';
export { share } from './stats/share.ts';
export { weightedShare } from './stats/weighted-share.ts';
