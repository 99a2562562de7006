import { useEffect, useRef, useState } from 'preact/hooks';
import { createEngine } from '../engine/engine.ts';
import type { SheetLook } from '../engine/look-job.ts';
import type { SheetChoice } from './sheet-choice.ts';

/** An engine of its own, so that counts grow while a plan is worked out. */
const engine = createEngine();

/** Milliseconds of quiet before the sheet is read again. */
const LOOK_AFTER = 400;

/** The sheet as read last, and the snaps that have something to mend. */
export interface Looked {
  readonly look: SheetLook;
  /** Snaps by their place in the chart. */
  readonly rows: readonly number[];
}

/** A sheet to look into. */
interface Looking {
  readonly sheet: SheetChoice;
  readonly opponent: string;
  readonly text: () => string;
  /** Another value is another sheet to read. */
  readonly snaps: unknown;
}

/** What a sheet says while it is typed, read in a worker. */
export function useLook({ sheet, opponent, text, snaps }: Looking): Looked | null {
  const [looked, setLooked] = useState<Looked | null>(null);
  const asked = useRef(0);
  useEffect(() => {
    if (snaps === undefined) return;
    const mine = ++asked.current;
    const timer = setTimeout(async () => {
      const now = text();
      const request = { file: sheet.path, text: now, kind: sheet.kind, opponent };
      const look = await engine.run('look', request).result.catch(() => null);
      if (look !== null && mine === asked.current) setLooked({ look, rows: rowsOf(look, now) });
    }, LOOK_AFTER);
    return () => clearTimeout(timer);
  }, [snaps, sheet.path]);
  return looked;
}

/** Lines of the file as places of snaps: the remarks and the header stand before them. */
function rowsOf({ findings }: SheetLook, text: string): number[] {
  const head = text.split('\n').findIndex((line) => !/^"?#/.test(line)) + 1;
  return [...new Set(findings.map(({ row }) => row - head - 1))].filter((at) => at >= 0).sort((a, b) => a - b);
}
