/** A command quoted in the README with the first lines of what it prints. */
export interface QuotedRun {
  /** What follows the program's name. */
  readonly args: readonly string[];
  readonly lines: readonly string[];
  /** The block as it stands, without its fences. */
  readonly block: string;
}

/** Marks what is left out, of a line or after the last one. */
export const CUT = '…';

/** Longest line quoted, in characters; more would wrap on a page. */
const LONGEST = 150;

/** The blocks of a section that begin with the program's name after a dollar sign, in order. */
export function quotedRuns(readme: string, heading: string): readonly QuotedRun[] {
  const from = readme.indexOf(`\n## ${heading}\n`);
  if (from < 0) return [];
  const next = readme.indexOf('\n## ', from + 4);
  const section = readme.slice(from, next < 0 ? undefined : next);
  return [...section.matchAll(/```\n(\$ pressure-plan (.*)\n[\s\S]*?)\n?```/g)].map(([, block = '', args = '']) => {
    const lines = block.split('\n').slice(1);
    return { args: args.trim().split(/ +/), lines: lines.filter((line) => line !== CUT), block };
  });
}

/** What a command printed as the README quotes it: the first `count` lines, long ones cut. */
export function quoted(printed: string, count: number): string[] {
  const lines = printed.trimEnd().split('\n').map(shortened);
  return lines.length > count ? [...lines.slice(0, count), CUT] : lines;
}

function shortened(line: string): string {
  const characters = [...line.trimEnd()];
  return characters.length <= LONGEST
    ? characters.join('')
    : `${characters.slice(0, LONGEST).join('').trimEnd()} ${CUT}`;
}
