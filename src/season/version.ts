/** The tool's version, printed by --version and in every report; a test holds it to package.json. */
export const VERSION = '0.1.0';
