/**
 * A new element with attributes and children; children that are text stay text.
 *
 * @param attributes - written as they are; `null` leaves one out
 */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string | null>> = {},
  children: readonly (Node | string)[] = [],
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) if (value !== null) made.setAttribute(key, value);
  made.append(...children);
  return made;
}

let region: HTMLElement | undefined;

/** Says a change to assistive tools, in the page's one live region. */
export function announce(text: string): void {
  if (region === undefined) {
    region = element('p', { role: 'status', class: 'said' });
    (document.querySelector('main') ?? document.body).append(region);
  }
  region.textContent = text;
}
