import type { Call } from '../../game/call-library.ts';
import type { HoleMet } from '../fit/fit-result.ts';
import type { MenuInput } from './input.ts';

/** Where a call gives up on purpose what they do too often, and what that is. */
export interface ClosedCall {
  /** The hole they meet most among those that close it somewhere; null where it is open everywhere. */
  readonly hole: HoleMet | null;
  /** Situations in which it is not called. */
  readonly situations: ReadonlySet<string>;
}

/**
 * Where a call stays at home: in every situation in which they are expected to meet one of its declared holes on more
 * than the share week.yaml allows. A quarterback who runs on second and short closes the call there, not on third and
 * long.
 */
export function closedCall({ fit, settings }: Pick<MenuInput, 'fit' | 'settings'>, { given = [] }: Call): ClosedCall {
  const most = settings.menu.hole_share;
  const closing = fit.holes
    .filter(({ hole }) => given.includes(hole))
    .filter(({ situations }) => situations.some(({ share }) => share > most))
    .sort((a, b) => b.share - a.share);
  const shut = closing.flatMap(({ situations }) => situations.filter(({ share }) => share > most));
  return { hole: closing[0] ?? null, situations: new Set(shut.map(({ situation }) => situation)) };
}
