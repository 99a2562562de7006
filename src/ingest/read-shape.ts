import { type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { suggest, withDigits } from './look-alike.ts';

/** Backs, tight ends and receivers who may catch a pass: eleven less five linemen and the quarterback. */
const ELIGIBLES = 5;

/** Backs then tight ends; an asterisk marks a sixth lineman. */
const PERSONNEL = /^([0-5])([0-5])(\*?)$/;

/** Receivers to the strength, then away from it. */
const RECEIVERS = /^([0-5])\s*[x\u00d7]\s*([0-5])$/;

/** Players a personnel code names. */
export interface PersonnelCounts {
  readonly backs: number;
  readonly tightEnds: number;
  readonly extraLinemen: number;
}

/** Backs, tight ends and extra linemen a personnel code names; undefined when it is not such a code. */
export function personnelCounts(code: string): PersonnelCounts | undefined {
  const [, backs, tightEnds, star] = code.match(PERSONNEL) ?? [];
  if (backs === undefined || tightEnds === undefined) return undefined;
  return { backs: Number(backs), tightEnds: Number(tightEnds), extraLinemen: star === '*' ? 1 : 0 };
}

/** A personnel code (`11` = one back, one tight end), kept as text so that `01` stays `01`. */
export function readPersonnel(text: string): CellReading {
  const counts = personnelCounts(text);
  if (counts === undefined)
    return faultReading('is not a personnel code: backs, then tight ends, as in 11', meantPersonnel(text));
  if (counts.backs + counts.tightEnds > ELIGIBLES) return faultReading('is more than five backs and tight ends');
  return valueReading(text);
}

/** A receiver distribution (`3x1` = three to the strength, one away from it). */
export function readReceivers(text: string): CellReading {
  const [, strong, weak] = text.toLowerCase().match(RECEIVERS) ?? [];
  if (strong === undefined || weak === undefined) {
    return faultReading('is not a count to the strength x away from it, as in 3x1', meantReceivers(text));
  }
  if (Number(strong) + Number(weak) > ELIGIBLES) return faultReading('is more than five receivers');
  if (Number(weak) > Number(strong)) {
    return faultReading('names fewer receivers to the strength than away from it', suggest(text, `${weak}x${strong}`));
  }
  return valueReading(`${strong}x${weak}`);
}

function meantPersonnel(text: string): string | undefined {
  if (/^[0-5]$/.test(text)) return `Did you mean "0${text}"? Spreadsheets drop a zero in front.`;
  const meant = withDigits(text).replace(/[\s.,-]/g, '');
  return personnelCounts(meant) === undefined ? undefined : suggest(text, meant);
}

function meantReceivers(text: string): string | undefined {
  const [, strong, weak] = withDigits(text).match(/^([0-5])\s*[-:/*xX by]*\s*([0-5])$/) ?? [];
  return strong === undefined ? undefined : suggest(text, `${strong}x${weak}`);
}
