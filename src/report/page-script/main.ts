/// <reference lib="dom" />
import { openForHashAndPrint } from './open-details.ts';
import { addRowSearch } from './row-search.ts';
import { makeTablesSortable } from './sortable-tables.ts';
import { addThemeSwitch } from './theme-switch.ts';
import { fillWhatIf } from './what-if-panel.ts';

// The page is complete without this script; it only adds sorting, searching, printing everything, a theme switch and
// what-if.
makeTablesSortable();
addRowSearch();
openForHashAndPrint();
addThemeSwitch();
fillWhatIf();
