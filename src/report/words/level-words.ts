import type { Level } from '../../game/call-library.ts';

/** At what level other offenses are taken to play, which no sheet says. */
export function levelWords(level: Level): string {
  return `sheets carry no level of play; every offense is taken as ${level.replace('_', ' ')}; yards a snap is the only sign of it`;
}
