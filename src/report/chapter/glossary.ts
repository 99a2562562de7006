import { html } from '../page/html.ts';
import { sureMark } from '../page/sure-mark.ts';
import type { Block } from '../view/block.ts';
import { GLOSSARY } from '../words/glossary-words.ts';
import { SURE_LEVELS } from '../words/sure-words.ts';

/** Our words and the four phrases of how sure, each in one line. */
export function glossary(): Block {
  const sure = SURE_LEVELS.map(({ id, meaning }) => html`<dt>${sureMark(id)} ${id}</dt><dd>${meaning}</dd>\n`);
  const items = GLOSSARY.map(([word, meaning]) => html`<dt>${word}</dt><dd>${meaning}</dd>\n`);
  return { kind: 'prose', html: html`<dl id="glossary">${sure}${items}</dl>\n` };
}
