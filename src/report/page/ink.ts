/**
 * Colors of the pages in their two themes. The accent prints as a mid gray; every tint is light enough to survive a
 * one-bit copy under black digits.
 */
export const INK = {
  light: {
    ink: '#111111',
    soft: '#4a4a4a',
    paper: '#ffffff',
    rule: '#8a8a8a',
    grid: '#dcdcdc',
    accent: '#2a6f97',
    tints: ['#ffffff', '#f0f4f7', '#e2eaf0', '#d3e0e9', '#c2d5e2'],
  },
  dark: {
    ink: '#f0f0f0',
    soft: '#bdbdbd',
    paper: '#161616',
    rule: '#8f8f8f',
    grid: '#3a3a3a',
    accent: '#7db8da',
    tints: ['#161616', '#1d2830', '#233441', '#294153', '#2f4e64'],
  },
} as const;

/** One theme of {@link INK}. */
export type Theme = (typeof INK)[keyof typeof INK];

/** The theme as CSS variables. */
export function inkVariables(theme: Theme): string {
  const tints = theme.tints.map((tint, i) => `--tint${i}:${tint}`).join(';');
  const { ink, soft, paper, rule, grid, accent } = theme;
  return `--ink:${ink};--soft:${soft};--paper:${paper};--rule:${rule};--grid:${grid};--accent:${accent};${tints}`;
}
