import { contactLoad } from './contact.ts';
import { type LookCard, lookCards } from './look-card.ts';
import { lookSplits } from './look-card-share.ts';
import { repCounts } from './rep-count.ts';
import { repOrder } from './rep-order.ts';
import { fillPeriods, type RepPeriod, repPeriods } from './rep-period.ts';
import type { ChosenMenu, ScriptInput } from './script-input.ts';
import { type ScriptPair, scriptPairs } from './script-pair.ts';
import type { PracticeScript, ScriptCall, ScriptRep } from './script-result.ts';
import { hashWeights, situationsInOrder } from './script-situation.ts';
import { spreadEvenly } from './script-spread.ts';
import { withBase } from './with-base.ts';

/**
 * The practice script of a week: every call of the menu against its likeliest, its worst and its make-or-break looks; then
 * what it takes to install the new calls; the other repetitions by largest remainder of the call's part, half as the
 * menu calls it and half as it must be kept, times what the forecast expects. As many repetitions as the periods of
 * week.yaml hold; the base is repped as often as it is
 * called; other calls off the menu get none.
 */
export function practiceScript(given: ScriptInput): PracticeScript {
  const input = { ...given, menu: withBase(given.menu, given.library) };
  const { settings, chart } = input;
  const periods = repPeriods(settings.practice.days);
  const seats = periods.reduce((sum, { reps }) => sum + reps, 0);
  const pairs = scriptPairs(input, lookSplits(chart, settings.situations));
  const { counts, unmet } = repCounts(pairs, seats);
  const used = new Set(pairs.filter((_, i) => (counts[i] as number) > 0).map(({ look }) => look));
  const cards = lookCards(chart, settings.situations, used);
  return {
    reps: scriptReps(input, { pairs, counts, cards, periods }),
    periods,
    cards,
    calls: scriptCalls(input.menu, pairs, counts),
    contact: contactLoad(settings.practice.days, settings.practice.contact_limits),
    unmet: unmet.map(({ call, look }) => ({ call, look })),
  };
}

interface Counted {
  readonly pairs: readonly ScriptPair[];
  readonly counts: readonly number[];
  readonly cards: readonly LookCard[];
  readonly periods: readonly RepPeriod[];
}

function scriptReps(input: ScriptInput, { pairs, counts, cards, periods }: Counted): ScriptRep[] {
  const order = repOrder(pairs.map((pair, i) => ({ ...pair, count: counts[i] as number })));
  const inTurn = order.flatMap((index) => pairs[index] ?? []);
  const situations = situationsInOrder(inTurn);
  const placed = inTurn.map((pair, i) => ({ pair, situation: situations[i] ?? 'first_ten' }));
  const hashes = spreadEvenly(hashWeights(input.chart), placed.length);
  const cardOf = new Map(cards.map(({ kind, number }) => [kind, number]));
  const filled = fillPeriods(situations, periods);
  const inOrder = filled.flatMap((indices, period) => indices.map((index) => ({ index, period })));
  return inOrder.flatMap(({ index, period }, at) => {
    const [rep, when] = [placed[index], periods[period]];
    if (!rep || !when) return [];
    const { pair, situation } = rep;
    return {
      number: at + 1,
      day: when.day,
      period: when.period,
      contact: when.contact,
      ...sayings(pair),
      situation,
      hash: hashes[at] ?? 'middle',
      card: cardOf.get(pair.look) ?? 0,
    };
  });
}

function sayings({ call, path, family, coverage, sentFrom, isNew, look, reasons }: ScriptPair) {
  return { call, path, family, coverage, sentFrom, isNew, look, reasons };
}

function scriptCalls(menu: ChosenMenu, pairs: readonly ScriptPair[], counts: readonly number[]): ScriptCall[] {
  return menu.calls.map(({ call, family, reps: asked }) => {
    const own = pairs.flatMap((pair, i) => (pair.call === call ? [{ pair, reps: counts[i] as number }] : []));
    const looks = own.filter(({ reps }) => reps > 0);
    return {
      call,
      family,
      isNew: own[0]?.pair.isNew ?? false,
      reps: looks.reduce((sum, { reps }) => sum + reps, 0),
      asked,
      looks: looks.map(({ pair, reps }) => ({ look: pair.look, reps, reasons: pair.reasons })),
    };
  });
}
