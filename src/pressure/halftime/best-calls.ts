import type { MenuCall, MenuSituation } from '../menu/result.ts';
import type { CallMark } from './first-half-marks.ts';
import type { CallNet } from './rank-by-fit.ts';

/** Right less wrong of a call in one situation, -1 to 1, Sunday and now; null where it was never worked out. */
export interface FitMove {
  readonly call: string;
  readonly before: number | null;
  readonly now: number | null;
}

/** A call that tonight goes ahead of one that Sunday put before it. */
export interface Overtaking {
  readonly call: string;
  readonly over: string;
  /** Tonight's snaps, by number or else by row of the sheet, on which it was the better of the two; may be empty. */
  readonly snaps: readonly string[];
}

/** Sunday's calls of one situation in tonight's order. */
export interface SituationCalls {
  readonly situation: string;
  readonly expectedSnaps: number;
  readonly calls: readonly FitMove[];
  readonly overtakings: readonly Overtaking[];
}

/** Sunday's menu, its fit on Sunday and tonight, and what each call was on tonight's snaps. */
export interface BestCallsInput {
  readonly situations: readonly MenuSituation[];
  readonly menu: readonly MenuCall[];
  readonly sunday: readonly CallNet[];
  readonly halftime: readonly CallNet[];
  readonly marks: readonly CallMark[];
}

/** Share from which on Sunday's sheet calls a call in a situation. */
const ON_SHEET = 0.005;
/** A call goes ahead of another once it is right on half a snap in ten more; less is noise. Judgment. */
const AHEAD_BY = 0.05;

/**
 * Sunday's calls by situation in the order to call them now: the sheet's own order, but for a call that Sunday had no
 * better than the one before it and that tonight's snaps put ahead of it by half a snap in ten. Nothing that Sunday's
 * sheet does not call there is named.
 */
export function bestCalls(input: BestCallsInput): readonly SituationCalls[] {
  return input.situations.map(({ id, expectedSnaps }) => {
    const sheet = onSheet(input.menu, id).map((call) => ({ call, ...fitsOf(input, call, id) }));
    const calls = halftimeOrder(sheet);
    const overtakings = calls.flatMap((one, i) => overtaken(input, id, { one, over: sheet[i] }));
    return { situation: id, expectedSnaps, calls, overtakings };
  });
}

/** The situation's calls, most called first. */
function onSheet(menu: readonly MenuCall[], situation: string): readonly string[] {
  return menu
    .map(({ call, mix }) => ({ call, share: mix.find((part) => part.situation === situation)?.share ?? 0 }))
    .filter(({ share }) => share > ON_SHEET)
    .sort((a, b) => b.share - a.share)
    .map(({ call }) => call);
}

function fitsOf({ sunday, halftime }: BestCallsInput, call: string, situation: string): Omit<FitMove, 'call'> {
  const netIn = (fits: readonly CallNet[]) =>
    fits.find((fit) => fit.call === call && fit.situation === situation)?.net.mean ?? null;
  return { before: netIn(sunday), now: netIn(halftime) };
}

/** Each call in turn moves up past those it goes ahead of. */
function halftimeOrder(sheet: readonly FitMove[]): readonly FitMove[] {
  return sheet.reduce<readonly FitMove[]>((placed, call) => {
    const behind = placed.findLastIndex((other) => !goesAhead(call, other));
    return [...placed.slice(0, behind + 1), call, ...placed.slice(behind + 1)];
  }, []);
}

function goesAhead(call: FitMove, other: FitMove): boolean {
  if (call.before === null || call.now === null || other.before === null || other.now === null) return false;
  return call.before <= other.before && call.now - other.now >= AHEAD_BY;
}

/** The call that now stands where Sunday had another, with the snaps that did it. */
function overtaken(
  { marks }: BestCallsInput,
  situation: string,
  { one, over }: { readonly one: FitMove; readonly over: FitMove | undefined },
): Overtaking[] {
  if (over === undefined || over.call === one.call || !goesAhead(one, over)) return [];
  const better = marks.filter((mark) => (mark.nets.get(one.call) ?? 0) > (mark.nets.get(over.call) ?? 0));
  const here = better.filter((mark) => mark.situation === situation);
  const snaps = (here.length > 0 ? here : better).map(({ name }) => name);
  return [{ call: one.call, over: over.call, snaps }];
}
