import { element } from './element.ts';

/** Opens the folded part a link points into; adds a button that opens everything and prints it. */
export function openForHashAndPrint(): void {
  addEventListener('hashchange', openTarget);
  openTarget();
  const button = element('button', { type: 'button' }, ['Print everything']);
  button.addEventListener('click', printEverything);
  const tools = document.getElementById('tools');
  tools?.append(button);
  if (tools) tools.hidden = false;
}

/** Closed parts stay off the paper; for this one print all of them are open. */
function printEverything(): void {
  const closed = [...document.querySelectorAll('details')].filter((details) => !details.open);
  for (const details of closed) details.open = true;
  print();
  for (const details of closed) details.open = false;
}

function openTarget(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  for (let at = target?.closest('details'); at; at = at.parentElement?.closest('details')) at.open = true;
  if (target?.closest('details')) target.scrollIntoView();
}
