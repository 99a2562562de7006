/** Prints a page from a frame of its own, in which no script runs; the frame goes when it was printed. */
export function printPage(text: string): void {
  const frame = document.createElement('iframe');
  frame.setAttribute('sandbox', 'allow-same-origin allow-modals');
  frame.setAttribute('aria-hidden', 'true');
  frame.className = 'printing';
  frame.srcdoc = text;
  frame.onload = () => {
    const inside = frame.contentWindow;
    inside?.addEventListener('afterprint', () => frame.remove());
    inside?.print();
  };
  document.querySelector('iframe.printing')?.remove();
  document.body.append(frame);
}
