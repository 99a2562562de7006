import { contentPolicy } from './content-policy.ts';
import { type Html, html, trusted } from './html.ts';

/** The parts of a single-file page. */
export interface PageParts {
  readonly title: string;
  readonly style: string;
  /** Script text of our own build; empty for a page without script. */
  readonly script: string;
  readonly body: Html;
}

/** The whole document as one string: no outside reference, everything allowed is named by its hash. */
export async function documentText({ title, style, script, body }: PageParts): Promise<string> {
  const safeScript = script.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
  const policy = await contentPolicy(style, safeScript);
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${trusted(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${trusted(style)}</style>
</head>
<body>
${body}
${safeScript === '' ? null : trusted(`<script>${safeScript}</script>\n`)}</body>
</html>
`;
  return page.text;
}
