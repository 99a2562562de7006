import { element } from './element.ts';

/** Adds a button that turns the page dark or light, whatever the system prefers; paper is always light. */
export function addThemeSwitch(): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const button = element('button', { type: 'button' });
  const isDark = () => (document.documentElement.dataset['theme'] ?? (dark.matches ? 'dark' : 'light')) === 'dark';
  const name = () => {
    button.textContent = isDark() ? 'Light page' : 'Dark page';
  };
  button.addEventListener('click', () => {
    document.documentElement.dataset['theme'] = isDark() ? 'light' : 'dark';
    name();
  });
  dark.addEventListener('change', name);
  name();
  document.getElementById('tools')?.append(button);
}
