/** Whether two files hold the same; null is not a file. */
export function sameBytes(one: Uint8Array | null, other: Uint8Array | null): boolean {
  if (one === null || other === null) return one === other;
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

/** The text of a file to be written as bytes. */
export function bytesOf(text: string | Uint8Array): Uint8Array {
  return typeof text === 'string' ? new TextEncoder().encode(text) : text;
}
