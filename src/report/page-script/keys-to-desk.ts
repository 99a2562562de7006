/** A key that the page around a framed page listens to. */
export interface KeyForDesk {
  /** `Escape`, or the digit's key that was pressed with Alt, such as `Digit4`. */
  readonly keyForDesk: string;
}

/** Says Escape, and Alt with a digit, to the page around this one: inside of the desk the focus may stand in here. */
export function sayKeysToDesk(): void {
  if (window.parent === window) return;
  window.addEventListener('keydown', (event) => {
    const isTurn = event.altKey && /^Digit[1-9]$/.test(event.code);
    if (!isTurn && event.key !== 'Escape') return;
    event.preventDefault();
    const said: KeyForDesk = { keyForDesk: isTurn ? event.code : 'Escape' };
    // The page around has no address when it was opened from disk; what is said is no secret.
    window.parent.postMessage(said, '*');
  });
}
