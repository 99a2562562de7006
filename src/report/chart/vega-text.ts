import * as vega from 'vega';
import { type TextWeight, textWidth } from './text-width.ts';

/** The part of a text mark the width depends on. */
interface TextItem {
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
  readonly limit?: number;
}

/**
 * Makes the chart library measure text with our own table. Its own guess without a drawing canvas is up to twice the
 * true width, and with one the bytes would depend on the fonts of the machine.
 */
export function measureTextOurselves(): void {
  textMetrics.width = (item, text) => {
    const width = textWidth(textOf(text), item.fontSize ?? 11, weightOf(item));
    return item.limit !== undefined && item.limit > 0 ? Math.min(width, item.limit) : width;
  };
}

/** Starts the numbering of clip paths and gradients again, so that a drawing does not depend on those before it. */
export function restartIds(): void {
  (vega as unknown as { resetSVGDefIds: () => void }).resetSVGDefIds();
}

// The library exports both at run time and leaves them out of its types.
const { textMetrics } = vega as unknown as {
  textMetrics: { width: (item: TextItem, text: unknown) => number };
};

function textOf(text: unknown): string {
  return text === null || text === undefined ? '' : String(text);
}

function weightOf({ fontWeight }: TextItem): TextWeight {
  return fontWeight === 'bold' || Number(fontWeight) >= 600 ? 'bold' : 'regular';
}
