import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import type { KeyForDesk } from '../../report/page-script/keys-to-desk.ts';

/**
 * Hears the keys pressed while the focus stands in a framed page. A page without a script is listened to from here: its
 * frame lets us in and runs no script of its own. A page with one is kept apart, and says its keys in messages.
 *
 * @returns what the frame does once its page is there
 */
export function useFrameKeys(frame: RefObject<HTMLIFrameElement | null>): () => void {
  useEffect(() => {
    const hear = ({ source, data }: MessageEvent) => {
      const { keyForDesk } = (data ?? {}) as Partial<KeyForDesk>;
      if (source === frame.current?.contentWindow && typeof keyForDesk === 'string') turn(keyForDesk);
    };
    window.addEventListener('message', hear);
    return () => window.removeEventListener('message', hear);
  }, []);
  return () => frame.current?.contentDocument?.addEventListener('keydown', handOver);
}

function handOver(event: KeyboardEvent): void {
  const { key, code, altKey, ctrlKey, metaKey } = event;
  const isTurn = altKey && /^Digit[1-9]$/.test(code);
  if (isTurn || key === 'Escape') {
    event.preventDefault();
    turn(isTurn ? code : key);
  } else if (/^[^ ]$/.test(key) && !altKey && !ctrlKey && !metaKey) typeOn(event);
}

/** A character typed into a page that takes none goes to the strip beside it; the next one is heard there. */
function typeOn(event: KeyboardEvent): void {
  const { key, code } = event;
  if (strip() === null) return;
  event.preventDefault();
  takeFocus();
  strip()?.dispatchEvent(new KeyboardEvent('keydown', { key, code, bubbles: true }));
}

/** Escape gives the focus back to the desk; the code of a digit turns to its view as well. */
function turn(code: string): void {
  takeFocus();
  if (code !== 'Escape') window.dispatchEvent(new KeyboardEvent('keydown', { code, altKey: true }));
}

function takeFocus(): void {
  (strip() ?? document.querySelector<HTMLElement>('nav [aria-current]'))?.focus();
}

/** The strip beside the page, when there is one: what is typed goes there. */
function strip(): HTMLElement | null {
  return document.querySelector('[role=application]');
}
