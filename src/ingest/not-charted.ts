/** What a profile writes for a code of the sheet that says nothing. */
export const NOT_CHARTED = 'not charted';
