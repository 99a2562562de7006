import type { OwnFilmChapter, Remedy } from '../../pressure/self-scout/result.ts';
import { counted, signed } from './number-words.ts';
import { shareWords } from './share-words.ts';
import type { Sure } from './sure-words.ts';
import type { Statement } from './why-words.ts';

/** What our film gives away, in one statement. */
export function givesAwayStatement(film: OwnFilmChapter): Statement {
  const path = film.guesses.find(({ knows }) => knows === 'path');
  const blind = film.guesses.find(({ knows }) => knows === 'nothing');
  if (path === undefined || blind === undefined || path.share.trials === 0) {
    return { words: 'Too few of our pressures are charted to say what our film gives away.', sure: null };
  }
  const numbers = `${shareWords(path.share)} right off the path, ${blind.share.count} by blind guess.`;
  const sure = path.share.count > blind.share.count ? gainSure(path.gain) : 'no difference';
  return sure === 'no difference'
    ? { words: `Our path does not give away the coverage: ${numbers}`, sure }
    : { words: `Our path gives away the coverage: ${numbers}`, sure };
}

function gainSure(gain: OwnFilmChapter['guesses'][number]['gain']): Sure {
  if (gain === null) return 'lean';
  return gain.low > 0 ? 'clear' : 'no difference';
}

/** The smallest change that helps, in one sentence. */
export function changeUpWords(remedy: Remedy): string {
  const snaps = remedy.swaps.reduce((sum, swap) => sum + swap.snaps, 0);
  if (snaps === 0) {
    return remedy.givesAway ? 'No path we carry has a second coverage that would change it.' : 'No change-up needed.';
  }
  const over = counted(remedy.games, 'game', 'games');
  return `Change up ${snaps} of the next ${Math.round(remedy.coming)} pressures (${over}); ${costWords(remedy.costPoints)}.`;
}

function costWords(cost: number): string {
  const written = signed(-cost);
  if (written === '0.0') return 'it costs nothing';
  return cost > 0
    ? `it costs ${written.replace(/^[+\u2212]/, '')} points in all`
    : `it gains ${written.replace('+', '')} points in all`;
}
