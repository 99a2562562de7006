import { useEffect, useRef, useState } from 'preact/hooks';
import type { SettingChange } from '../../season/edit-yaml.ts';
import type { SettingProblem, WeekLook } from '../../season/week-look.ts';
import { textOf } from '../desk-state.ts';
import { createEngine } from '../engine/engine.ts';
import type { ViewProps } from './view-props.ts';

const engine = createEngine();

/** A week's settings under the pen. */
export interface WeekSettingsPen {
  readonly look: WeekLook;
  /** Makes changes; once they are done, and nothing new is wrong, they are saved. */
  readonly change: (changes: readonly SettingChange[], isDone: boolean) => void;
  /** Takes a whole text in place of the one that stands there. */
  readonly write: (text: string) => void;
  /** What stands in the form is in no file, for something is wrong. */
  readonly isWaiting: boolean;
}

interface Pen {
  text: string;
  /** What this form saved and the page has not shown it yet. */
  readonly ownSaves: Set<string>;
  /** What was wrong in the file as it is saved. */
  faults: readonly SettingProblem[];
  turn: Promise<void>;
}

/** The settings of a week, read in a worker at every change, one change after another; null until they were read. */
export function useWeekSettings({ desk, open, week }: ViewProps): WeekSettingsPen | null {
  const path = `${week}/week.yaml`;
  const saved = textOf(open.files, path);
  const [look, setLook] = useState<WeekLook | null>(null);
  const pen = useRef<Pen>({ text: saved, ownSaves: new Set(), faults: [], turn: Promise.resolve() });
  const take = async (text: string, changes: readonly SettingChange[], isDone: boolean) => {
    const next = await engine.run('week', { text, changes }).result;
    pen.current.text = next.text;
    setLook(next);
    if (changes.length === 0 && !isDone) pen.current.faults = next.problems;
    else if (isDone && !isWorse(next, pen.current.faults)) await keep(next);
  };
  const keep = async ({ text, problems }: WeekLook) => {
    if (text === textOf(desk.state.open?.files ?? open.files, path)) return;
    pen.current.ownSaves.add(text);
    pen.current.faults = problems;
    await desk.save([{ name: path, text }]);
  };
  const queue = (work: () => Promise<void>) => {
    pen.current.turn = pen.current.turn.then(work).catch((error) => desk.complain(error));
  };
  // What this form saved itself is no news: the coach may be typing on.
  useEffect(() => {
    if (!pen.current.ownSaves.delete(saved)) queue(() => take(saved, [], false));
  }, [saved]);
  if (look === null) return null;
  return {
    look,
    change: (changes, isDone) => queue(() => take(pen.current.text, changes, isDone)),
    write: (text) => queue(() => take(text, [], true)),
    isWaiting: look.text !== saved && isWorse(look, pen.current.faults),
  };
}

/** Something is wrong that was not wrong in the file. */
function isWorse({ problems }: WeekLook, before: readonly SettingProblem[]): boolean {
  return problems.some(({ path, words }) => !before.some((known) => known.path === path && known.words === words));
}
