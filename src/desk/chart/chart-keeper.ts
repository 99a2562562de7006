import type { SheetKind } from '../../ingest/sheet-kind.ts';
import { readChartSheet, type SnapCells } from '../../season/chart-sheet.ts';
import type { Desk } from '../desk.ts';
import { textOf } from '../desk-state.ts';
import { baseOf, type ChartDraft, draftOf, resumed } from './chart-draft.ts';
import { type ChartState, openChart } from './chart-state.ts';
import { sheetWriter } from './sheet-text.ts';

/** Milliseconds after the last change until the sheet is written; what was typed is kept at every key before that. */
const WRITE_AFTER = 250;

/** The sheet to chart into. */
export interface ChartPlace {
  readonly desk: Desk;
  /** The sheet's path in the season. */
  readonly path: string;
  readonly kind: SheetKind;
  /** What a new game begins with. */
  readonly game: SnapCells;
  /** Our calls by name. */
  readonly calls: readonly string[];
}

/** What the page shows of a chart. */
export interface ChartShown {
  readonly state: ChartState | null;
  /** The headers are not ours: the sheet is read through a profile and not typed into here. */
  readonly isForeign: boolean;
  /** Somebody else changed the sheet; what was typed here is not in it. */
  readonly isStuck: boolean;
}

/** A chart nobody opened yet. */
export const NO_CHART: ChartShown = { state: null, isForeign: false, isStuck: false };

/** Keeps a chart at every key and writes it into its sheet. */
export class ChartKeeper {
  private readonly place: ChartPlace;
  private readonly show: (shown: ChartShown) => void;
  private shown: ChartShown = NO_CHART;
  private saved: readonly SnapCells[] = [];
  private base = '';
  private writer: (snaps: readonly SnapCells[]) => string = () => '';
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(place: ChartPlace, show: (shown: ChartShown) => void) {
    this.place = place;
    this.show = show;
  }

  /** Opens the sheet where it was left. */
  async open(): Promise<void> {
    const { desk, path, kind, game, calls } = this.place;
    const text = textOf(desk.state.open?.files ?? new Map(), path);
    const sheet = readChartSheet(text) ?? (text === '' ? { remarks: [], columns: [], snaps: [] } : null);
    if (sheet === null) return this.put({ isForeign: true });
    this.saved = sheet.snaps;
    this.base = baseOf(text);
    this.writer = sheetWriter(sheet);
    const left = (await desk.keptDraft(path)) as ChartDraft | undefined;
    const { depth = 'plan', passes = 'both' } = left ?? {};
    // A sheet that was begun goes on with the game of its last snap.
    const opening = { kind, calls, depth, passes, game: sheet.snaps.length === 0 ? game : {}, snaps: sheet.snaps };
    const isSame = left?.base === this.base;
    if (left === undefined || !(isSame || left.unsaved.length > 0)) return this.put({ state: openChart(opening) });
    this.put({ state: resumed(opening, left), isStuck: !isSame });
  }

  /** Takes the chart after a stroke. */
  take(state: ChartState): void {
    this.put({ state });
    this.keep(state);
    if (state.snaps === this.saved || this.shown.isStuck) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.write(), WRITE_AFTER);
  }

  /** The sheet as text. */
  text(): string {
    return this.writer(this.shown.state?.snaps ?? []);
  }

  /** Puts what was typed into a sheet beside, and reads the other one. */
  async keepBeside(): Promise<void> {
    const { desk, path } = this.place;
    const text = this.text();
    await desk.reread();
    if (!(await desk.save([{ name: path.replace(/([^/]+)$/, 'kept-$1'), text }]))) return;
    await desk.keepDraft(path, undefined);
    this.put({ isStuck: false });
    await this.open();
  }

  /** Writes at once what still waits, for the page is going away. */
  flush(): void {
    if (this.timer === undefined) return;
    clearTimeout(this.timer);
    void this.write();
  }

  private put(change: Partial<ChartShown>): void {
    this.shown = { ...this.shown, ...change };
    this.show(this.shown);
  }

  private keep(state: ChartState): void {
    void this.place.desk.keepDraft(this.place.path, draftOf(state, this.saved, this.base));
  }

  private async write(): Promise<void> {
    this.timer = undefined;
    const { desk, path } = this.place;
    const { state } = this.shown;
    if (state === null) return;
    const text = this.writer(state.snaps);
    if (!(await desk.save([{ name: path, text }]))) return this.put({ isStuck: await desk.isChanged(path) });
    this.saved = state.snaps;
    this.base = baseOf(text);
    if (this.shown.state !== null) this.keep(this.shown.state);
  }
}
