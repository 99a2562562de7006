/// <reference lib="dom" />
import { sayKeysToDesk } from './keys-to-desk.ts';
import { openForHashAndPrint } from './open-details.ts';
import { addRowSearch } from './row-search.ts';
import { makeTablesSortable } from './sortable-tables.ts';
import { addThemeSwitch } from './theme-switch.ts';
import { fillWhatIf } from './what-if-panel.ts';

// The page is complete without this script; it only adds sorting, searching, printing everything, a theme switch,
// what-if and, inside of the desk, the desk's own keys.
makeTablesSortable();
addRowSearch();
openForHashAndPrint();
addThemeSwitch();
fillWhatIf();
sayKeysToDesk();
