/** Opens the folded part a link points into, and every folded part while the page is printed. */
export function openForHashAndPrint(): void {
  addEventListener('hashchange', openTarget);
  openTarget();
  let opened: HTMLDetailsElement[] = [];
  addEventListener('beforeprint', () => {
    opened = [...document.querySelectorAll('details')].filter((details) => !details.open);
    for (const details of opened) details.open = true;
  });
  addEventListener('afterprint', () => {
    for (const details of opened) details.open = false;
  });
}

function openTarget(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  for (let at = target?.closest('details'); at; at = at.parentElement?.closest('details')) at.open = true;
  if (target?.closest('details')) target.scrollIntoView();
}
