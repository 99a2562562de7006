import type { WhatIfModel } from '../what-if.ts';
import { type Html, html } from './html.ts';

/** The place of the what-if panel; the page script fills it, and without script it stays hidden. */
export function whatIfPanel(model: WhatIfModel | null): Html {
  if (model === null) return html``;
  return html`<div class="what-if" id="what-if" hidden data-model="${JSON.stringify(model)}"></div>\n`;
}
