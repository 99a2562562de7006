import { html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';

/** What the page must not be taken for. */
export function cautionsChapter(): Chapter {
  return {
    id: 'cautions',
    title: 'Cautions',
    short: 'Cautions',
    blocks: [{ kind: 'prose', html: html`<ul>${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}</ul>\n` }],
  };
}

/** The cautions in a coach's words; the sheets print a shorter form. */
export const CAUTIONS: readonly string[] = [
  'This is guidance from few snaps. It supports the staff’s judgement and does not replace it.',
  'Rules and contact limits belong to your state association; any question about a player’s health belongs to licensed athletic trainers. Follow them where this page says otherwise or nothing.',
  'Teach a free rusher to pull up and keep his head up; no helmet contact, nothing below the knee. Peel and cut drills go on bags. Nobody rushes a scout passer live.',
  'A pressure that was not practised should not be called.',
  'No player names are needed or stored. Do not write them into notes or call names.',
];
