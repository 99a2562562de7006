import { type HTMLElement, NodeType, parse } from 'node-html-parser';

const UNSEEN = new Set(['SCRIPT', 'STYLE', 'HEAD', 'TEMPLATE']);
const INLINE = new Set([
  'A',
  'ABBR',
  'B',
  'CODE',
  'EM',
  'I',
  'LABEL',
  'OUTPUT',
  'SMALL',
  'SPAN',
  'STRONG',
  'SUB',
  'SUP',
  'TSPAN',
]);
const CELLS = new Set(['TD', 'TH']);

/** What a reader sees of a page, a line per block and a bar between the cells of a table; charts have their words. */
export function visibleLines(html: string): string {
  const parts: string[] = [];
  walk(parse(html, { comment: false }), parts);
  return parts
    .join('')
    .split('\n')
    .map((line) => line.replace(/\s+/g, ' ').trim())
    .filter((line) => line !== '' && line !== '|')
    .join('\n');
}

function walk(element: HTMLElement, parts: string[]): void {
  for (const node of element.childNodes) {
    if (node.nodeType === NodeType.TEXT_NODE) parts.push(node.text.replace(/\s+/g, ' '));
    if (node.nodeType === NodeType.ELEMENT_NODE) walkElement(node as HTMLElement, parts);
  }
}

function walkElement(element: HTMLElement, parts: string[]): void {
  if (UNSEEN.has(element.tagName)) return;
  const close = CELLS.has(element.tagName) ? ' | ' : INLINE.has(element.tagName) ? '' : '\n';
  if (close === '\n') parts.push('\n');
  walk(element, parts);
  parts.push(close);
}

/** Attributes that place or shade a mark. */
const PLACED = [
  'aria-label',
  'transform',
  'd',
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'width',
  'height',
  'fill',
  'stroke',
];

/** Every mark of a page's drawings with its place, a line each, whole pixels. */
export function drawnMarks(html: string): string {
  return parse(html)
    .querySelectorAll('svg')
    .flatMap((svg) => [`svg ${svg.getAttribute('aria-label') ?? ''}`, ...svg.querySelectorAll('*').flatMap(markLine)])
    .join('\n');
}

function markLine(element: HTMLElement): string[] {
  const placed = PLACED.flatMap((name) => {
    const value = element.getAttribute(name);
    return value === undefined || value === '' ? [] : [`${name}=${value.replace(/-?\d+\.\d+/g, wholePixels)}`];
  });
  const own = element.childNodes.length === 1 && element.childNodes[0]?.nodeType === NodeType.TEXT_NODE;
  const words = own ? ` "${element.text.trim()}"` : '';
  return placed.length === 0 && words === '' ? [] : [`  ${element.rawTagName} ${placed.join(' ')}${words}`];
}

function wholePixels(value: string): string {
  const whole = Math.round(Number(value));
  return String(whole === 0 ? 0 : whole);
}
