import { THIN_SNAPS } from '../../game/thin-snaps.ts';

/** What our words mean, in a coach's order. */
export const GLOSSARY: readonly (readonly [string, string])[] = [
  ['Situation', 'down and distance, cut where this staff cuts it in week.yaml'],
  ['Answer', 'what they do with the ball: run, QB run, screen, quick, dropback, deep shot, movement'],
  ['Base', 'our four-man rush; every pressure is measured against it'],
  ['Path', 'who rushes and through which lane'],
  ['Call', 'a path with the coverage behind it and a rotation'],
  [
    'Family',
    'a kind of pressure: three-under, four-under and man-free send five; hot, zero and peel send six; the add-on is a late seventh rusher',
  ],
  ['Menu, mix', 'the calls we carry this week, and the share of snaps on which we call each'],
  ['Pairing', 'path and coverage together, the way they read it off our film'],
  ['Near, far', 'near is the side we send it to; far is the other side'],
  ['To the back', 'sent to the side where the back lines up; away from the back is the other side'],
  ['Slide', 'the direction the line turns its pass protection'],
  ['Peel', 'a rusher who stops rushing to take a back who releases to his side'],
  ['Add-on', 'a deep safety who joins the rush late when the back stays in'],
  ['Home', 'a rusher gets to the passer before the ball is out'],
  ['Right, neutral, wrong', 'whether the idea of a call holds up against what they do on a snap'],
  ['Points', 'expected points a call saves against the base on the same snaps'],
  ['Expect', 'where the count lands in 95 of 100 games like this one'],
  ['Long run', 'where the true rate lies 95 times in 100, if they stay the same offense'],
  [
    'Tendency',
    'something you see before the snap after which one thing follows more often than down, distance and look explain',
  ],
  ['So far', 'seen on film, not yet in enough games to plan on'],
  ['Explosive', 'a play that gains more than the yardage a staff calls a big play'],
  ['Not charted', 'a blank in the chart: never counted as a no or as 0'],
  ['Thin', `fewer than ${THIN_SNAPS} snaps: shown with an open mark, a lean at most, never an order`],
];
