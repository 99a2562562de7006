import { type Html, html } from '../page/html.ts';
import type { WhatIfModel } from '../view/what-if.ts';

/** The place of the what-if panel; the page script fills it, and without script it stays hidden. */
export function whatIfPanel(model: WhatIfModel | null): Html {
  if (model === null) return html``;
  return html`<div class="what-if" id="what-if" hidden data-model="${JSON.stringify(model)}"></div>\n`;
}
