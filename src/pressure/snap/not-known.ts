/** The code of a snap whose word is not known because something was not charted; never a class of its own. */
export const NOT_KNOWN = 255;
