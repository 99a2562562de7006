import { useEffect, useRef, useState } from 'preact/hooks';
import type { SettingChange } from '../../season/edit-yaml.ts';
import type { SettingProblem, WeekLook } from '../../season/week-look.ts';
import type { Desk } from '../desk.ts';
import { textOf } from '../desk-state.ts';
import { createEngine } from '../engine/engine.ts';
import { type EarlierSettings, earlierSettings, type SettingsDraft } from './earlier-settings.ts';
import type { ViewProps } from './view-props.ts';

const engine = createEngine();

/** A week's settings under the pen. */
export interface WeekSettingsPen {
  readonly look: WeekLook;
  /** Makes changes; once they are done, and nothing new is wrong, they are saved. */
  readonly change: (changes: readonly SettingChange[], isDone: boolean) => void;
  /** Takes a whole text in place of the one that stands there. */
  readonly write: (text: string, isDone: boolean) => void;
  /** What stands in the form is in no file, for something is wrong. */
  readonly isWaiting: boolean;
  /** What was typed before the page was opened again, and is in no file; null when nothing is. */
  readonly earlier: EarlierSettings | null;
  /** Saves what was typed earlier as it stands in the form. */
  readonly save: () => void;
  /** Goes back to the file as it is. */
  readonly putAway: () => void;
}

/** A week's week.yaml: where it lies, and who keeps it. */
interface WeekFile {
  readonly desk: Desk;
  readonly path: string;
}

interface Pen {
  text: string;
  /** Changes that were typed and are not in the text yet. */
  pending: readonly SettingChange[];
  /** What this form saved and the page has not shown it yet. */
  readonly ownSaves: Set<string>;
  /** What was wrong in the file as it is saved. */
  faults: readonly SettingProblem[];
  turn: Promise<void>;
}

/**
 * The settings of a week, read in a worker at every change, one change after another; null until they were read. Every
 * key is kept in the browser until its setting is in the file, so that a page opened again shows what is wrong in it.
 */
export function useWeekSettings({ desk, open, week }: ViewProps): WeekSettingsPen | null {
  const file: WeekFile = { desk, path: `${week}/week.yaml` };
  const saved = textOf(open.files, file.path);
  const [look, setLook] = useState<WeekLook | null>(null);
  const [earlier, setEarlier] = useState<EarlierSettings | null>(null);
  const pen = useRef<Pen>({ text: saved, pending: [], ownSaves: new Set(), faults: [], turn: Promise.resolve() });
  const read = async (text: string, changes: readonly SettingChange[]) => {
    const next = await engine.run('week', { text, changes }).result;
    pen.current.text = next.text;
    pen.current.pending = pen.current.pending.slice(changes.length);
    setLook(next);
    return next;
  };
  const queue = (work: () => Promise<void>) => queued(desk, pen.current, work);
  const keepIfSound = async (next: WeekLook) => {
    if (!isWorse(next, pen.current.faults) && (await keep(file, pen.current, next))) setEarlier(null);
  };
  const take = (draft: SettingsDraft, isDone: boolean) => {
    void desk.keepDraft(file.path, draft);
    queue(async () => {
      const next = await read(draft.changes.length === 0 ? draft.text : pen.current.text, pen.current.pending);
      if (isDone) await keepIfSound(next);
    });
  };
  const reopen = async () => {
    pen.current.pending = [];
    pen.current.faults = (await read(saved, [])).problems;
    const left = (await desk.keptDraft(file.path)) as SettingsDraft | undefined;
    const found = earlierSettings(left, saved);
    setEarlier(found);
    if (left !== undefined && found?.kind === 'typed') await read(left.text, left.changes);
  };
  // What this form saved itself is no news: the coach may be typing on.
  useEffect(() => {
    if (!pen.current.ownSaves.delete(saved)) queue(reopen);
  }, [saved]);
  if (look === null) return null;
  return {
    look,
    change: (changes, isDone) => {
      pen.current.pending = [...pen.current.pending, ...changes];
      take({ base: saved, text: pen.current.text, changes: pen.current.pending }, isDone);
    },
    write: (text, isDone) => take({ base: saved, text, changes: [] }, isDone),
    isWaiting: look.text !== saved && isWorse(look, pen.current.faults),
    earlier,
    save: () => queue(() => keepIfSound(look)),
    putAway: () => queue(() => desk.keepDraft(file.path, undefined).then(reopen)),
  };
}

/** One piece of work after another. */
function queued(desk: Desk, pen: Pen, work: () => Promise<void>): void {
  pen.turn = pen.turn.then(work).catch((error) => desk.complain(error));
}

/** Saves a text that is another than the file's; what was typed is in the file then and kept nowhere else. */
async function keep({ desk, path }: WeekFile, pen: Pen, { text, problems }: WeekLook): Promise<boolean> {
  if (text !== textOf(desk.state.open?.files ?? new Map(), path)) {
    pen.ownSaves.add(text);
    if (!(await desk.save([{ name: path, text }]))) return false;
    pen.faults = problems;
  }
  if (pen.pending.length === 0) await desk.keepDraft(path, undefined);
  return true;
}

/** Something is wrong that was not wrong in the file. */
function isWorse({ problems }: WeekLook, before: readonly SettingProblem[]): boolean {
  return problems.some(({ path, words }) => !before.some((known) => known.path === path && known.words === words));
}
