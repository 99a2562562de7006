/** A line that grows past any row, gathered in pieces until its end comes. */
export interface EndlessLine {
  /** Takes the beginning of such a line. */
  readonly start: (text: string) => void;
  /** Takes the line's share of the next piece and gives what follows the line; all of the piece when no line waits. */
  readonly rest: (text: string) => string;
  /** Hands over the line that never ended. */
  readonly end: () => void;
}

/** Gathers a line without end and hands it to `take` whole when its end comes, so that nothing of it is lost. */
export function createEndlessLine(newline: string, take: (line: string) => void): EndlessLine {
  let pieces: string[] = [];
  const handOver = (): void => {
    take(pieces.join(''));
    pieces = [];
  };
  return {
    start: (text) => {
      pieces = [text];
    },
    rest: (text) => {
      if (pieces.length === 0) return text;
      const end = text.indexOf(newline);
      pieces.push(end === -1 ? text : text.slice(0, end));
      if (end === -1) return '';
      handOver();
      return text.slice(end + 1);
    },
    end: () => {
      if (pieces.length > 0) handOver();
    },
  };
}
