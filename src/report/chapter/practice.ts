import type { ContactLevel, PracticeDay } from '../../game/week-settings.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Block, Chapter } from '../view/block.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { familyLabel } from '../words/label.ts';

/** What to practice: reps by call, and contact minutes by day against the limits set. */
export function practiceChapter(plan: WeekPlan): Chapter {
  return {
    id: 'practice',
    title: 'What we practice',
    short: 'Practice',
    blocks: [...repBlocks(plan), ...contactBlocks(plan), CONTACT_CAUTION],
  };
}

const CONTACT_CAUTION: Block = {
  kind: 'prose',
  html: html`<p>${'Thud and live count as full contact. The limits are published guidance or your own setting: your state association decides, and licensed athletic trainers have the last word on any player. Peel drills go on bags; nobody rushes a scout passer live.'}</p>\n`,
};

function repBlocks(plan: WeekPlan): readonly Block[] {
  if (plan.menu?.kind !== 'menu') return [];
  const isNew = (name: string) => Number(stateOf(plan, name) === NEW);
  const calls = [...plan.menu.calls].sort((a, b) => isNew(b.call) - isNew(a.call) || b.reps - a.reps);
  const table: TableView = {
    id: 'reps-table',
    caption: `Reps the menu asks for: ${plan.menu.reps} of ${plan.menu.repsAllowed} this week`,
    columns: [words('Call'), words('Kind'), numbers('Reps'), words('State')],
    rows: calls.map((call) => ({
      name: call.call,
      cells: [
        textCell(familyLabel(call.family)),
        numberCell(String(call.reps), call.reps),
        textCell(stateOf(plan, call.call)),
      ],
    })),
    empty: 'no call is carried',
  };
  return [{ kind: 'table', table }];
}

const NEW = 'new this week: install it first';

function stateOf(plan: WeekPlan, name: string): string {
  const call = plan.library?.calls.find((entry) => entry.name === name);
  if (call === undefined) return 'not in the library';
  return call.installed ? 'installed: keep it' : NEW;
}

/** Nothing where week.yaml plans no practice. */
function contactBlocks(plan: WeekPlan): readonly Block[] {
  return plan.settings.practice.days.length === 0 ? [] : [{ kind: 'table', table: contactTable(plan) }];
}

function contactTable(plan: WeekPlan): TableView {
  const limits = plan.settings.practice.contact_limits;
  return {
    id: 'contact-table',
    caption: `Full-contact minutes planned, against ${limits.minutes_per_day} a day and ${limits.minutes_per_week} a week`,
    columns: [
      words('Day'),
      numbers('Minutes'),
      numbers('Pressure reps'),
      numbers('Full contact'),
      words('Against the limit'),
    ],
    rows: plan.settings.practice.days.map((day) => ({
      name: day.day,
      cells: [
        numberCell(String(minutesOf(day, ALL_LEVELS)), minutesOf(day, ALL_LEVELS)),
        numberCell(String(repsOf(day)), repsOf(day)),
        numberCell(`${minutesOf(day, FULL_CONTACT)} min`, minutesOf(day, FULL_CONTACT)),
        textCell(minutesOf(day, FULL_CONTACT) > limits.minutes_per_day ? 'over the limit' : 'within the limit'),
      ],
    })),
    empty: 'no practice day',
  };
}

const FULL_CONTACT: readonly ContactLevel[] = ['thud', 'live'];
const ALL_LEVELS: readonly ContactLevel[] = ['air', 'bags', 'control', 'thud', 'live'];

function minutesOf(day: PracticeDay, levels: readonly ContactLevel[]): number {
  return day.periods.reduce((sum, period) => sum + (levels.includes(period.contact) ? period.minutes : 0), 0);
}

function repsOf(day: PracticeDay): number {
  return day.periods.reduce((sum, period) => sum + period.reps, 0);
}
