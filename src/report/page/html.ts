import { cleanText } from '../words/clean-text.ts';

/** Markup that is safe to write into a page. */
export interface Html {
  readonly kind: 'html';
  readonly text: string;
}

/** What may stand in a hole of {@link html}: markup stays markup, everything else becomes escaped text. */
export type Renderable = Html | string | number | null | readonly Renderable[];

/**
 * Markup from a template; every hole that is not markup itself is cleaned and escaped, so a name stays text.
 *
 * @example html`<b>${'<script>'}</b>` // text "<b>&lt;script&gt;</b>"
 */
export function html(parts: TemplateStringsArray, ...holes: readonly Renderable[]): Html {
  const text = parts.map((part, i) => part + (i < holes.length ? written(holes[i] ?? null) : '')).join('');
  return { kind: 'html', text };
}

/** Markup made by this program itself; never call it with text from a file. */
export function trusted(text: string): Html {
  return { kind: 'html', text };
}

/** Cleaned text with the five characters that mean something in markup escaped. */
export function escapeText(text: string): string {
  return cleanText(text).replace(/[&<>"']/g, (character) => ESCAPES[character] ?? '');
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function written(value: Renderable): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return escapeText(value);
  if ('kind' in value) return value.text;
  return value.map(written).join('');
}
