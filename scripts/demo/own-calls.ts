import type { Call, CallLibrary } from '../../src/game/call-library.ts';
import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import { pick } from './pick.ts';

const COVERAGE_SHOWN: Readonly<Record<Call['family'], string>> = {
  base: 'three_deep',
  three_under: 'three_deep',
  four_under: 'two_deep',
  man_free: 'man_free',
  hot: 'three_deep',
  zero: 'zero',
  peel: 'man_free',
  peel_spy: 'man_free',
  add_on: 'man_free',
};

/** A played game seen twice: their snaps with what we really sent, and our own call sheet of the night. */
export interface PlayedGame {
  readonly theirs: SnapRecord[];
  readonly ours: SnapRecord[];
}

/** Lays our invented calls over a game: more pressure on long downs, a favourite coverage behind each path. */
export function playOurCalls(snaps: readonly SnapRecord[], library: CallLibrary, random: Random): PlayedGame {
  const calls = snaps.map((snap) => chooseCall(snap, library.calls, random));
  const theirs = snaps.map((snap, i) => ({
    ...snap,
    rushers_faced: calls[i]!.rush.length,
    coverage_faced: COVERAGE_SHOWN[calls[i]!.family],
  }));
  return { theirs, ours: snaps.map((snap, i) => ownRow(snap, calls[i]!, random)) };
}

function chooseCall(snap: SnapRecord, calls: readonly Call[], random: Random): Call {
  const base = calls.filter((call) => call.family === 'base');
  if (random.uniform() > pressureShare(snap))
    return pick(
      random,
      base.map((call) => [call, 1]),
    );
  const pressures = calls.filter((call) => call.family !== 'base' && call.installed);
  const paths = [...new Set(pressures.map((call) => call.path))];
  const path = pick(
    random,
    paths.map((name, i) => [name, 1 / (i + 1.5)]),
  );
  const behind = pressures.filter((call) => call.path === path);
  return pick(
    random,
    behind.map((call, i) => [call, i === 0 ? 4 : 1]),
  );
}

function pressureShare(snap: SnapRecord): number {
  const [down, toGo] = [Number(snap.down), Number(snap.to_go)];
  if (down >= 3) return toGo >= 7 ? 0.72 : 0.55;
  if (down === 2) return toGo >= 7 ? 0.48 : 0.32;
  return 0.3;
}

function ownRow(snap: SnapRecord, call: Call, random: Random): SnapRecord {
  const early = random.uniform() < (call.family === 'base' ? 0.1 : 0.3);
  const changed = early && snap.tempo === 'freeze' ? random.uniform() < 0.5 : random.uniform() < 0.05;
  return {
    ...snap,
    call: call.name,
    path: call.path,
    family: call.family,
    coverage: call.coverage,
    rotation: call.rotation,
    shown_early: early ? 'yes' : 'no',
    checked: changed ? 'yes' : 'no',
  };
}
