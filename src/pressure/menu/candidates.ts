import type { Call } from '../../game/call-library.ts';
import type { MenuInput } from './input.ts';
import { THEORIES, theoryOf } from './theory.ts';

/** The pressures a menu may be made of, by path and name, and the others with the reason they are out. */
export interface MenuOffer {
  readonly calls: readonly Call[];
  readonly out: readonly { readonly call: string; readonly why: string }[];
  /** Theories that sound and scored pressures of the library teach, banned or not. */
  readonly theories: readonly number[];
}

/**
 * The sound, scored pressures that are not banned; every other pressure with its reason. Calls of the four-man base are
 * neither: the base is always carried and takes no place on the menu.
 *
 * @param lifted - names of banned calls that are offered all the same, in small letters
 */
export function menuOffer(input: MenuInput, lifted: ReadonlySet<string> = new Set()): MenuOffer {
  const pressures = input.library.calls.filter(({ family }) => family !== 'base');
  const unfit = new Map(pressures.map((call) => [call, unfitness(call, input)]));
  const banned = new Set(input.settings.menu.ban.map(plain).filter((name) => !lifted.has(name)));
  const reason = (call: Call) => (banned.has(plain(call.name)) ? BANNED : unfit.get(call));
  const fit = pressures.filter((call) => unfit.get(call) === null);
  return {
    calls: inOrderOfPaths(fit.filter((call) => reason(call) === null)),
    out: pressures.flatMap((call) => {
      const why = reason(call);
      return why ? [{ call: call.name, why }] : [];
    }),
    theories: THEORIES.map((_, theory) => theory).filter((theory) =>
      fit.some((call) => theoryOf(call.family) === theory),
    ),
  };
}

/** A call's name as it is compared: without regard to case and outer blanks. */
export function plain(name: string): string {
  return name.trim().toLowerCase();
}

const BANNED = 'banned in week.yaml';

function unfitness(call: Call, { soundness, scores }: MenuInput): string | null {
  const fault = soundness.find((found) => found.call === call.name && !found.declared);
  if (fault) return `not sound: ${fault.words}`;
  const found = scores.calls.filter((score) => score.call === call.name);
  if (found.length === 0) return 'not scored this week';
  return found.every(({ points }) => Number.isFinite(points.mean)) ? null : 'its score is not a number';
}

/** Paths and the calls of each by name, so that the order in which defense.yaml lists them means nothing. */
function inOrderOfPaths(calls: readonly Call[]): Call[] {
  const before = (a: string, b: string) => (a === b ? 0 : a < b ? -1 : 1);
  return [...calls].sort((a, b) => before(a.path, b.path) || before(a.name, b.name));
}
