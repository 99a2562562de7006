/// <reference lib="dom" />
import { openForHashAndPrint } from './open-details.ts';
import { addRowSearch } from './row-search.ts';
import { addSituationFilter } from './situation-filter.ts';
import { makeTablesSortable } from './sortable-tables.ts';
import { addThemeSwitch } from './theme-switch.ts';
import { fillWhatIf } from './what-if-panel.ts';

// The page is complete without this script; it only adds sorting, searching, filtering, a theme switch and what-if.
openForHashAndPrint();
makeTablesSortable();
addRowSearch();
const situations = addSituationFilter();
addThemeSwitch();
fillWhatIf(situations);
