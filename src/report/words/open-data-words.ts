import { OPEN_DATA_ATTRIBUTION } from '../../pressure/evidence/open-data.ts';

/** The credit line of every page that shows figures worked out from open play data, with where the license stands. */
export const OPEN_DATA_LINE = `Open play data of the professional game. ${OPEN_DATA_ATTRIBUTION} CC BY 4.0: creativecommons.org/licenses/by/4.0; CC BY-SA 4.0: creativecommons.org/licenses/by-sa/4.0.`;
