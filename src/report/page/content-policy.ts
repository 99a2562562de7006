/**
 * The content security policy of a page that may load nothing: only the style and script texts given may apply.
 *
 * @param style - exact text between the style tags
 * @param script - exact text between the script tags, empty when the page has none
 * @see W3C Content Security Policy Level 3, hash sources
 */
export async function contentPolicy(style: string, script: string): Promise<string> {
  const scripts = script === '' ? "'none'" : `'sha256-${await hashOf(script)}'`;
  const sources = [`default-src 'none'`, `style-src 'sha256-${await hashOf(style)}'`, `script-src ${scripts}`];
  return [...sources, 'img-src data:', `base-uri 'none'`, `form-action 'none'`].join('; ');
}

async function hashOf(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
}
