import { cleanText } from '../words/clean-text.ts';
import { type TextWeight, textWidth } from './text-width.ts';

/** How a text is set when it is wrapped. */
export interface TextSetting {
  readonly size: number;
  readonly weight?: TextWeight;
}

/**
 * The text broken into lines that fit a width; a word wider than that is broken inside, at its hyphens where that is
 * enough. Nothing is cut off.
 *
 * @param text - any text; it is cleaned first
 * @param width - pixels, above the width of one letter
 * @returns at least one line
 */
export function wrapText(text: string, width: number, setting: TextSetting): readonly string[] {
  const fits = (line: string) => textWidth(line, setting.size, setting.weight ?? 'regular') <= width;
  const lines: string[] = [''];
  for (const word of cleanText(text)
    .split(' ')
    .flatMap((part) => brokenWord(part, fits))) {
    const last = lines.at(-1) ?? '';
    const longer = last === '' ? word : `${last} ${word}`;
    if (fits(longer) || last === '') lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function brokenWord(word: string, fits: (line: string) => boolean): readonly string[] {
  if (fits(word)) return [word];
  const parts = word.split(/(?<=\p{L}-)(?=\p{L})/u);
  if (parts.length > 1) return parts.flatMap((part) => brokenWord(part, fits));
  const pieces: string[] = [''];
  for (const character of word) {
    const last = pieces.at(-1) ?? '';
    if (last === '' || fits(last + character)) pieces[pieces.length - 1] = last + character;
    else pieces.push(character);
  }
  return pieces;
}
