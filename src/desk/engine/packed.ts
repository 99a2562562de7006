import { inflateSync } from 'fflate';

/** A part of the page that is packed into it: deflated, then base64. */
export type PackedPart = 'engine' | 'solver' | 'demo' | 'page-script';

/** The bytes of a packed part. */
export function unpack(part: PackedPart): Uint8Array<ArrayBuffer> {
  const text = document.getElementById(`packed-${part}`)?.textContent ?? '';
  const packed = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  return inflateSync(packed) as Uint8Array<ArrayBuffer>;
}

/** A packed part that is text. */
export function unpackText(part: PackedPart): string {
  return new TextDecoder().decode(unpack(part));
}
