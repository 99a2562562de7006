/** Colours of the pages in their two themes; every tint is light enough to survive a one-bit copy under black digits. */
export const INK = {
  light: {
    ink: '#111111',
    soft: '#454545',
    paper: '#ffffff',
    rule: '#8a8a8a',
    grid: '#dcdcdc',
    tints: ['#ffffff', '#f3f3f3', '#e6e6e6', '#d8d8d8', '#c8c8c8'],
  },
  dark: {
    ink: '#f0f0f0',
    soft: '#c4c4c4',
    paper: '#161616',
    rule: '#8f8f8f',
    grid: '#3a3a3a',
    tints: ['#161616', '#232323', '#303030', '#3d3d3d', '#4a4a4a'],
  },
} as const;

/** One theme of {@link INK}. */
export type Theme = (typeof INK)[keyof typeof INK];

/** The theme as CSS variables. */
export function inkVariables(theme: Theme): string {
  const tints = theme.tints.map((tint, i) => `--tint${i}:${tint}`).join(';');
  return `--ink:${theme.ink};--soft:${theme.soft};--paper:${theme.paper};--rule:${theme.rule};--grid:${theme.grid};${tints}`;
}
