import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { Review } from '../pressure/review/review.ts';
import { aboutTheDataChapter } from './chapter/about-the-data.ts';
import { cautionsChapter } from './chapter/cautions.ts';
import { familiesChapter } from './chapter/families.ts';
import { glossaryChapter } from './chapter/glossary.ts';
import { howTheyProtectChapter } from './chapter/how-they-protect.ts';
import { howToReadChapter } from './chapter/how-to-read.ts';
import { menuChapter } from './chapter/menu.ts';
import { ourFilmChapter } from './chapter/our-film.ts';
import { practiceChapter } from './chapter/practice.ts';
import { shortVersionChapter } from './chapter/short-version.ts';
import { whatTheyDoChapter } from './chapter/what-they-do.ts';
import { whenPressuredChapter } from './chapter/when-pressured.ts';
import { drawChart } from './chart/draw-chart.ts';
import { chapterMarkup } from './page/chapter.ts';
import { documentText } from './page/document.ts';
import { type Html, html } from './page/html.ts';
import { contentsBar, masthead } from './page/masthead.ts';
import { REPORT_STYLE } from './page/report-style.ts';
import type { Chapter } from './view/block.ts';

/** What the shell may hand in beside the plan. */
export interface ReportAssets {
  /** The page's own script as built from src/report/page-script/main.ts; without it the page is complete but still. */
  readonly script?: string;
  /** Reviews of the season's earlier weeks, in their order: forecast against what happened. */
  readonly reviews?: readonly Review[];
}

/**
 * The scouting report as one HTML file: complete without script, no outside reference, the same bytes for the same plan.
 *
 * @param plan - one week's plan; every number on the page comes from it
 * @returns the whole document
 */
export async function renderReport(plan: WeekPlan, assets: ReportAssets = {}): Promise<string> {
  const chapters = reportChapters(plan, assets.reviews);
  const sections: Html[] = [];
  for (const chapter of chapters) sections.push(await chapterMarkup(chapter, drawChart));
  const body = html`${masthead(plan)}${contentsBar(chapters)}<main>\n${sections}</main>\n`;
  return documentText({
    title: `Pressure plan for ${plan.opponent}`,
    style: REPORT_STYLE,
    script: assets.script ?? '',
    body,
  });
}

/** The chapters in the order of the page: the answer first, what stands behind it after. */
export function reportChapters(plan: WeekPlan, reviews: readonly Review[] = []): readonly Chapter[] {
  return [
    shortVersionChapter(plan),
    whatTheyDoChapter(plan, reviews),
    howTheyProtectChapter(plan),
    whenPressuredChapter(plan),
    familiesChapter(plan),
    menuChapter(plan),
    ourFilmChapter(plan),
    practiceChapter(plan),
    aboutTheDataChapter(plan),
    howToReadChapter(plan),
    glossaryChapter(),
    cautionsChapter(),
  ];
}
