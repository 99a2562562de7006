import { DESK_STYLE } from './desk-style.ts';

/** The parts of the desk's one file. */
export interface DeskParts {
  /** The page's own script, bundled. */
  readonly script: string;
  /** Script of the report page, which runs in a frame inside of the desk. */
  readonly pageScript: string;
  /** Packed parts, base64, by name. */
  readonly packed: Readonly<Record<string, string>>;
  /** What the page is allowed, worked out from the texts given. */
  readonly policyOf: (scripts: readonly string[]) => string;
}

/**
 * Script text that may stand in a page: inside a script element the parser takes `<!--` and `<script` for a beginning
 * and `</script` for the end, also within strings.
 *
 * @see WHATWG HTML, "Restrictions for contents of script elements"
 */
export function scriptInPage(script: string): string {
  return script.replaceAll('<!--', '\\x3C!--').replaceAll(/<(\/?script)/gi, '\\x3C$1');
}

/** The desk as one file that asks for nothing. */
export function deskPage({ script, pageScript, packed, policyOf }: DeskParts): string {
  const safe = scriptInPage(script);
  const parts = Object.entries(packed).map(
    ([name, text]) => `<script type="application/octet-stream" id="packed-${name}">${text}</script>\n`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf([safe, pageScript])}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>Pressure Plan</title>
<style>${DESK_STYLE}</style>
</head>
<body>
<div id="desk"></div>
<noscript><p>The desk needs JavaScript. The command line does the same work without it.</p></noscript>
${parts.join('')}<script>${safe}</script>
</body>
</html>
`;
}
