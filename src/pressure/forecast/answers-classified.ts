import type { Forecast } from './forecast-result.ts';

/**
 * Whether their own film tells what they do with the ball, and not only whether they run or pass: where it tells run and
 * pass and not one answer, the kinds within are those of other offenses. True where nothing is classified at all.
 */
export function answersAreClassified(forecasts: readonly Forecast[]): boolean {
  const snapsOf = (wanted: Forecast['target']) =>
    forecasts.find(({ target, situation }) => target === wanted && situation === 'all')?.ownSnaps ?? 0;
  return snapsOf('answer') > 0 || snapsOf('run_or_pass') === 0;
}
