import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { Review } from '../pressure/review/review.ts';
import { callsChapter } from './chapter/calls.ts';
import { fitChapter } from './chapter/fit.ts';
import { howDoYouKnowChapter } from './chapter/how-do-you-know.ts';
import { howTheyProtectChapter } from './chapter/how-they-protect.ts';
import { ourFilmChapter } from './chapter/our-film.ts';
import { practiceChapter } from './chapter/practice.ts';
import { whatTheyDoChapter } from './chapter/what-they-do.ts';
import { whenPressuredChapter } from './chapter/when-pressured.ts';
import { firstScreen } from './first/first-screen.ts';
import { chapterMarkup } from './layout/chapter.ts';
import { drawChart } from './layout/draw-chart.ts';
import { contentsBar, masthead } from './layout/masthead.ts';
import { REPORT_STYLE } from './layout/report-style.ts';
import { documentText } from './page/document.ts';
import { type Html, html } from './page/html.ts';
import type { Chapter } from './view/block.ts';
import { CAUTION_LINE } from './words/caution-words.ts';
import { OPEN_DATA_LINE } from './words/open-data-words.ts';

/** What the shell may hand in beside the plan. */
export interface ReportAssets {
  /** The page's own script as built from src/report/page-script/main.ts; without it the page is complete but still. */
  readonly script?: string;
  /** Reviews of the season's earlier weeks, in their order: forecast against what happened. */
  readonly reviews?: readonly Review[];
  /** Every folded part open, so that everything prints. */
  readonly full?: boolean;
}

/**
 * The plan as one HTML file: the first screen answers the staff meeting, the chapters show why. Complete without
 * script, no outside reference, the same bytes for the same plan.
 *
 * @param plan - one week's plan; every number on the page comes from it
 * @returns the whole document
 */
export async function renderReport(plan: WeekPlan, assets: ReportAssets = {}): Promise<string> {
  const chapters = reportChapters(plan, assets.reviews);
  const mode = { draw: drawChart, folds: assets.full ? 'open' : 'closed' } as const;
  const sections: Html[] = [];
  for (const chapter of chapters) sections.push(await chapterMarkup(chapter, mode));
  const body = html`${masthead(plan)}<main>\n${firstScreen(plan)}${contentsBar(chapters)}${sections}</main>
<footer><p>${CAUTION_LINE}</p><p>${OPEN_DATA_LINE}</p></footer>\n`;
  return documentText({
    title: `Pressure plan: ${plan.opponent}`,
    style: REPORT_STYLE,
    script: assets.script ?? '',
    body,
  });
}

/** The chapters in the order of a coach's questions. */
export function reportChapters(plan: WeekPlan, reviews: readonly Review[] = []): readonly Chapter[] {
  return [
    callsChapter(plan),
    whatTheyDoChapter(plan),
    whenPressuredChapter(plan),
    howTheyProtectChapter(plan),
    fitChapter(plan),
    ourFilmChapter(plan),
    practiceChapter(plan),
    howDoYouKnowChapter(plan, reviews),
  ].filter(({ blocks }) => blocks.length > 0);
}
