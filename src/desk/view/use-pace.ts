import { useEffect, useRef, useState } from 'preact/hooks';

/** A longer gap between two snaps is a break, not charting. */
const BREAK_MILLISECONDS = 90_000;
/** Snaps before a pace is said. */
const LEAST = 5;
/** Snaps of a game for what one takes; about what a high-school offense runs. Judgment. */
const GAME_SNAPS = 60;

/** How fast the coach charts, measured while he does, in words; empty before five snaps. */
export function usePace(snaps: number): string {
  const times = useRef<number[]>([]);
  const last = useRef({ snaps, at: 0 });
  const [words, setWords] = useState('');
  useEffect(() => {
    const now = performance.now();
    const gap = now - last.current.at;
    if (snaps === last.current.snaps + 1 && last.current.at > 0 && gap < BREAK_MILLISECONDS) times.current.push(gap);
    last.current = { snaps, at: now };
    if (times.current.length < LEAST) return;
    const seconds = median(times.current) / 1000;
    setWords(
      `Your pace: ${Math.round(seconds)} s a snap, about ${Math.round((seconds * GAME_SNAPS) / 60)} min a game.`,
    );
  }, [snaps]);
  return words;
}

function median(times: readonly number[]): number {
  const sorted = [...times].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
