import { html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';

/** Our words, each in one line. */
export function glossaryChapter(): Chapter {
  const items = WORDS.map(([word, meaning]) => html`<dt>${word}</dt><dd>${meaning}</dd>\n`);
  return {
    id: 'glossary',
    title: 'Glossary',
    short: 'Glossary',
    blocks: [{ kind: 'prose', html: html`<dl>${items}</dl>\n` }],
  };
}

const WORDS: readonly (readonly [string, string])[] = [
  ['Snap', 'one charted scrimmage play'],
  ['Situation', 'down and distance as this staff cuts it'],
  ['Answer', 'what the offense does with the ball: run, quarterback run, screen, quick, dropback, deep shot, movement'],
  ['Protection picture', 'how many protect, which way the line slides, and what the back does'],
  [
    'Family',
    'a kind of pressure: three-under, four-under and man-free send five; hot, zero and peel send six; the add-on sends a late seventh',
  ],
  ['Base', 'our four-man rush, against which every family is measured'],
  ['Path', 'who rushes and through which lane'],
  ['Call', 'a path with the coverage behind it and a rotation'],
  ['Pairing', 'path and coverage together, as an opponent reads them off our film'],
  ['Menu', 'the calls carried this week, with their mix'],
  ['Mix', 'the share of a situation’s snaps on which a call is called'],
  ['Near, far', 'the side the call is sent from, and the other'],
  ['Peel', 'a rusher who leaves the rush to take a back who releases on his side'],
  ['Add-on', 'a deep safety who joins the rush late when the back stays in'],
  ['Home', 'a rusher is at the passer before the ball is out'],
  ['Points saved', 'expected points against us that a call takes away, compared with the base on the same snaps'],
  ['Interval', 'where the true figure probably lies: 95% for shares, 80% for points and races'],
  [
    'Draws',
    'the many plausible versions of this week the tool plays through; "in 80% of the draws" means in 80 of 100 of them',
  ],
  ['Tell', 'something seen before the snap after which one thing follows more often than expected'],
  ['Explosive', 'a play that gains more than the yardage a staff calls a big play'],
  ['Thin', `fewer than 20 snaps`],
];
