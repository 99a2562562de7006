import { memoryFiles, wholeSeason } from '../season/memory-files.ts';
import { nextWeek } from '../season/new-season.ts';
import type { OutputFile } from '../season/store.ts';
import { type DeskState, EMPTY_DESK, type OpenSeason, VIEWS, type ViewId, weeksOf } from './desk-state.ts';
import { demoSeason, firstFiles, type NewSeason } from './engine/first-files.ts';
import { browserStore, storageProblem } from './store/browser-store.ts';
import { type Database, type KnownSeason, openDatabase, putAtOnce } from './store/database.ts';
import { folderStore } from './store/folder-store.ts';
import { askForFolder, knownFolder, pickFolder } from './store/known-folder.ts';
import { forget, remember, unknownYet } from './store/known-seasons.ts';
import { sameBytes } from './store/same-bytes.ts';
import { changedPaths, changesTo, withFiles } from './store/season-changes.ts';
import type { ComingSeason } from './store/season-files.ts';
import { type SeasonLock, takeLock } from './store/season-lock.ts';

/**
 * The desk behind the page: it holds the state, reads and writes the season that is open, and tells the page of every
 * change. Files are written one call after another.
 */
export class Desk {
  state: DeskState = EMPTY_DESK;
  private readonly database: Promise<Database> = openDatabase();
  private listener: (state: DeskState) => void = () => undefined;
  private lock: SeasonLock | null = null;
  private writing: Promise<unknown> = Promise.resolve();

  /** Reads the seasons known, and opens the one that was open last. */
  async start(listener: (state: DeskState) => void): Promise<void> {
    this.listener = listener;
    await this.guard(async () => {
      const seasons = await (await this.database).getAll('seasons');
      this.set({ seasons });
      const last = seasons.find(({ id }) => id === localStorage.getItem('pressure-plan open'));
      if (last?.where !== 'browser') return;
      this.set({ view: VIEWS.find(({ id }) => id === localStorage.getItem('pressure-plan view'))?.id ?? 'chart' });
      await this.open(last);
    });
  }

  /** Shows a view. */
  show(view: ViewId): void {
    localStorage.setItem('pressure-plan view', view);
    this.set({ view, note: null });
  }

  /** Puts a week on the desk. */
  turnTo(week: string): void {
    this.set({ week, note: null });
  }

  /** Takes the words on the page away. */
  dismiss(): void {
    this.set({ problem: null, note: null });
  }

  /** Says what went wrong. */
  complain(error: unknown): void {
    this.set({ problem: error instanceof Error ? error.message : String(error) });
  }

  /** Opens a season that the desk knows; for a folder the browser may ask the coach. */
  async openKnown(known: KnownSeason): Promise<void> {
    await this.guard(async () => {
      if (known.folder !== undefined) await askForFolder(known.folder);
      await this.open(known);
    });
  }

  /** Lets the coach pick a season folder, and opens it. */
  async openFolder(): Promise<void> {
    await this.guard(async () => {
      const folder = await pickFolder();
      if (folder === null) return;
      const known = await knownFolder(this.state.seasons, folder);
      await this.remember(known);
      await this.open(known);
    });
  }

  /** Puts a season into the browser's own storage and opens it. */
  async bringIn({ name, files }: ComingSeason): Promise<void> {
    await this.guard(async () => {
      const known = await unknownYet(await this.database, name);
      const store = browserStore(await this.database, known);
      await store.write([...files].map(([path, bytes]) => ({ name: path, text: bytes })));
      await this.remember(known);
      await this.open(known);
    });
  }

  /** The invented demo season, in the browser's own storage. */
  async demo(): Promise<void> {
    await this.bringIn(demoSeason());
  }

  /** A new season with its first week. */
  async newSeason(season: NewSeason): Promise<void> {
    await this.bringIn(firstFiles(season));
  }

  /** The season's next week, with what stays from the last one: most settings, practice days, the profile. */
  async newWeek(opponent: string): Promise<void> {
    const { open } = this.state;
    if (open === null) return;
    const last = Number(/\d+/.exec(weeksOf(open.files).at(-1) ?? '')?.[0] ?? 0);
    const week = `week-${String(last + 1).padStart(2, '0')}`;
    await this.guard(async () => {
      const files = await nextWeek(memoryFiles(open.files, open.known.name), { week, opponent });
      if (await this.save(files)) this.set({ week, note: `Made ${week}.` });
    });
  }

  /**
   * Writes files into the season, all or none, unless somebody else changed one of them meanwhile.
   *
   * @returns whether they were written; if not, the page says why
   */
  save(files: readonly OutputFile[]): Promise<boolean> {
    const turn = this.writing.then(() => this.saveNow(files));
    this.writing = turn;
    return turn;
  }

  /** What was typed into a sheet and is in no file yet, as it was kept last. */
  async keptDraft(path: string): Promise<unknown> {
    const id = this.state.open?.known.id ?? '';
    return (await this.database).get('drafts', `${id}/${path}`);
  }

  /** Keeps what was typed, in the browser, before it goes into its file. */
  async keepDraft(path: string, draft: unknown): Promise<void> {
    const { open } = this.state;
    if (open === null || open.isElsewhere) return;
    await this.guard(async () => putAtOnce(await this.database, `${open.known.id}/${path}`, draft));
  }

  /** Whether a file is another than the one last seen here; files being written are waited for. */
  isChanged(path: string): Promise<boolean> {
    const turn = this.writing.then(async () => {
      const { open } = this.state;
      if (open === null) return false;
      return !sameBytes(await open.store.read(path).catch(() => null), open.files.get(path) ?? null);
    });
    this.writing = turn;
    return turn;
  }

  /** Reads the season again; what changed outside of the page is said. */
  async reread(): Promise<void> {
    const { open } = this.state;
    if (open === null || this.state.saving === 'saving') return;
    await this.guard(async () => {
      const files = await wholeSeason(open.store);
      const paths = changedPaths(open.files, files);
      if (paths.length === 0 || this.state.open !== open) return;
      this.set({
        open: { ...open, files },
        note: `Changed outside of this page, so read again: ${paths.join(', ')}`,
      });
    });
  }

  /** Takes the season from the tab that has it. */
  async takeOver(): Promise<void> {
    const { open } = this.state;
    if (open === null) return;
    await this.takeLock(open.known, true);
    await this.guard(async () => this.put({ ...open, files: await wholeSeason(open.store), isElsewhere: false }));
  }

  /** Puts the season away. */
  close(): void {
    this.lock?.release();
    localStorage.removeItem('pressure-plan open');
    this.set({ open: null, view: 'chart', note: null, problem: null });
  }

  /** Takes a season off the desk; one in the browser's own storage is gone then, a folder stays as it is. */
  async forget(known: KnownSeason): Promise<void> {
    await this.guard(async () => {
      this.set({ seasons: await forget(await this.database, known) });
    });
  }

  private set(change: Partial<DeskState>): void {
    this.state = { ...this.state, ...change };
    this.listener(this.state);
  }

  private put(open: OpenSeason): void {
    this.set({ open });
  }

  private async guard(work: () => Promise<void>): Promise<void> {
    await work().catch((error) => this.complain(storageProblem(error)));
  }

  private async open(known: KnownSeason): Promise<void> {
    const database = await this.database;
    const store = known.folder === undefined ? browserStore(database, known) : folderStore(known.folder);
    const files = await wholeSeason(store);
    const held = await this.takeLock(known, false);
    localStorage.setItem('pressure-plan open', known.id);
    this.set({ week: weeksOf(files).at(-1) ?? '', problem: null, note: null, saving: 'saved' });
    this.put({ known, store, files, isElsewhere: !held });
  }

  private async takeLock(known: KnownSeason, steal: boolean): Promise<boolean> {
    this.lock?.release();
    const onLost = () => {
      const { open } = this.state;
      if (open?.known.id === known.id) this.put({ ...open, isElsewhere: true });
    };
    this.lock = await takeLock({ id: known.id, steal, onLost });
    return this.lock !== null;
  }

  private async remember(known: KnownSeason): Promise<void> {
    this.set({ seasons: await remember(await this.database, known) });
  }

  private async saveNow(files: readonly OutputFile[]): Promise<boolean> {
    const { open } = this.state;
    if (open === null || open.isElsewhere) return false;
    this.set({ saving: 'saving' });
    try {
      const changes = changesTo(open.files, files);
      await open.store.write(changes);
      const now = this.state.open;
      const put = now === null ? {} : { open: { ...now, files: withFiles(now.files, changes) } };
      this.set({ saving: 'saved', problem: null, ...put });
      return true;
    } catch (error) {
      this.set({ saving: 'failed', problem: (error as Error).message });
      return false;
    }
  }
}
