import { escapeText } from '../page/html.ts';

/** How a drawing is named. */
export interface DrawingName {
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/**
 * A drawing of the chart library made fit for the page: roles and labels of single marks taken out, one name put on the
 * whole, ids made the chart's own, and everything dropped that says nothing.
 *
 * @param svg - markup as the chart library wrote it; all text in it is escaped already
 */
export function cleanDrawing(svg: string, name: DrawingName): string {
  const size = sizeOf(svg);
  const inner = lean(svg.slice(svg.indexOf('>') + 1, svg.lastIndexOf('</svg>')));
  const own = withOwnIds(inner, name.id);
  const ids = `${name.id}-name ${name.id}-words`;
  return `<svg role="img" aria-labelledby="${ids}" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" font-size="13"><title id="${name.id}-name">${escapeText(name.title)}</title><desc id="${name.id}-words">${escapeText(name.description)}</desc><g aria-hidden="true">${own}</g></svg>`;
}

function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Math.ceil(Number(width)), height: Math.ceil(Number(height)) };
}

/** Attributes that repeat what the root or the style sheet says, or that speak to assistive tools mark by mark. */
const SPARE = [
  / (?:aria-[a-z]+|role|class|font-family|cursor|pointer-events)="[^"]*"/g,
  / font-size="13px"/g,
  / (?:opacity|fill-opacity|stroke-opacity)="1"/g,
  / stroke-width="0"/g,
  / stroke-dasharray="1,0"/g,
  / stroke-miterlimit="10"/g,
  / transform="translate\(0,0\)"/g,
];

function lean(markup: string): string {
  let text = markup.replace(/<[^>]+>/g, leanTag).replace(EMPTY_FRAME, '');
  for (let before = ''; before !== text; ) {
    before = text;
    text = text.replace(/<g[^>]*><\/g>/g, '').replace(LONELY_GROUP, '$1');
  }
  return text;
}

/** Frames of groups that carry no color, and groups without attributes round a single mark. */
const EMPTY_FRAME = /<path d="M0(?:\.5)?,0(?:\.5)?h[\d.]+v[\d.]+h-[\d.]+Z"\/>/g;
const LONELY_GROUP = /<g>(<(?:text|path|line)[^<]*(?:<\/text>)?)<\/g>/g;

/** Only tags are touched, never the text between them. */
function leanTag(tag: string): string {
  const lean = SPARE.reduce((left, pattern) => left.replace(pattern, ''), tag);
  const rounded = lean.replace(/-?\d+\.\d{2,}/g, (number) => String(Math.round(Number(number) * 10) / 10));
  return tag.startsWith('<text') ? rounded.replace(' fill="var(--ink)"', '') : rounded;
}

function withOwnIds(markup: string, id: string): string {
  return markup.replace(/ id="([^"]+)"/g, ` id="${id}-$1"`).replace(/url\(#([^)]+)\)/g, `url(#${id}-$1)`);
}
