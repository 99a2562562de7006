/** The code of a snap with no known word because something was not charted; never a class of its own. */
export const NOT_KNOWN = 255;
