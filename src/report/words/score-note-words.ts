import type { ScoreNote } from '../../pressure/score/score-notes.ts';
import { counted } from './number-words.ts';
import { percent } from './percent.ts';

/** What the points could not be made from, as a sentence. */
export function scoreNoteWords(note: ScoreNote): string {
  switch (note.kind) {
    case 'answers_not_charted':
      return 'What they do with the ball was not charted: an ordinary offense stands in, so points say little about this one.';
    case 'kinds_not_charted':
      return 'Run and pass are theirs; which kind of each was not charted, so other offenses say how their runs and passes split. Points against one kind, a screen for example, are a guess.';
    case 'runs':
      return `Nobody charts who rushed on runs (${percent(note.share)} of the snaps expected): there every family counts as the base.`;
    case 'no_own_film':
      return 'No film of our own pressures was given.';
    case 'own_film_unread':
      return `${counted(note.snaps, 'snap', 'snaps')} of our film lack the family, the down, their answer or the outcome.`;
    case 'no_own_base':
      return `Our film has ${counted(note.pressures, 'pressure', 'pressures')} and no four-man snap, so the level of play is part of the difference.`;
    case 'no_library':
      return 'No defense.yaml: only the families are scored, and nothing was raced.';
    case 'six_rushers':
      return 'The race treats the release and their protection as independent. Against six rushers a free man is often why the ball comes out at once: pro data has more quick throws pressured (34% where the race gives 20%) and fewer held balls (67% where it gives 80%); for four and five rushers they agree.';
    case 'base_not_raced':
      return 'No four-man call was raced, so the base is taken as it does against an average opponent.';
    default:
      return note satisfies never;
  }
}
