/** The code of a snap whose word cannot be told because something was not charted; never a class of its own. */
export const NOT_KNOWN = 255;
