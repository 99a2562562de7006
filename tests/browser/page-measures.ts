/// <reference lib="dom" />

/**
 * Runs in the page: texts of drawings that stand outside their drawing.
 *
 * @param spacing - extra space between letters, to stand in for a wider font
 */
export function chartTextProblems(spacing: string): string[] {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`svg text{letter-spacing:${spacing}}`);
  document.adoptedStyleSheets = [sheet];
  const problems: string[] = [];
  for (const svg of document.querySelectorAll('figure svg, svg.field')) {
    const frame = svg.getBoundingClientRect();
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBoundingClientRect();
      const out = Math.max(
        frame.left - box.left,
        box.right - frame.right,
        frame.top - box.top,
        box.bottom - frame.bottom,
      );
      if (out > 1) problems.push(`${text.textContent} by ${out.toFixed(1)} px`);
    }
  }
  return problems;
}

/** Runs in the page: texts of drawings with a contrast to what lies under them below 4.5 to 1. */
export function contrastProblems(): { problems: string[]; checked: number } {
  const paper = parse(getComputedStyle(document.body).backgroundColor);
  const problems: string[] = [];
  let checked = 0;
  for (const svg of document.querySelectorAll('figure svg, svg.field')) {
    const shapes = [...svg.querySelectorAll('path, circle')]
      .map((shape) => ({ fill: getComputedStyle(shape).fill, box: shape.getBoundingClientRect(), shape }))
      .filter(({ fill }) => fill.startsWith('rgb'));
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBoundingClientRect();
      const x = (box.left + box.right) / 2;
      const y = (box.top + box.bottom) / 2;
      const under = shapes.filter(
        ({ box: b, shape }) =>
          b.left <= x && x <= b.right && b.top <= y && y <= b.bottom && shape.compareDocumentPosition(text) & 4,
      );
      const ground = parse(under.at(-1)?.fill ?? 'rgb(0, 0, 0, 0)') ?? paper;
      const ink = parse(getComputedStyle(text).fill);
      checked += 1;
      const ratio = contrast(ink ?? [0, 0, 0], ground ?? [255, 255, 255]);
      if (ratio < 4.5) problems.push(`${text.textContent}: ${ratio.toFixed(1)}`);
    }
  }
  return { problems, checked };

  function parse(colour: string): number[] | null {
    const [r = 0, g = 0, b = 0, alpha = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
    return alpha === 0 ? null : [r, g, b];
  }
  // Relative luminance and contrast ratio: WCAG 2.2, definitions.
  function contrast(a: number[], b: number[]): number {
    const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((p, q) => q - p);
    return (light + 0.05) / (dark + 0.05);
  }
  function luminance(colour: number[]): number {
    const [r = 0, g = 0, b = 0] = colour.map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }
}

/** Runs in the page: tables and drawings wider than their place. */
export function overflowingScrollers(): string[] {
  const edge = document.documentElement.clientWidth;
  return [...document.querySelectorAll('table, figure svg, .card')]
    .map((shape) => ({ name: shape.id || shape.className.toString(), right: shape.getBoundingClientRect().right }))
    .filter(({ right }) => right > edge + 1)
    .map(({ name, right }) => `${name}: ${Math.round(right)} of ${edge}`);
}
