import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { documentText } from '../../src/report/page/document.ts';
import { escapeText, html } from '../../src/report/page/html.ts';

describe('html', () => {
  it('escapes every hole that is not markup, and keeps markup', () => {
    const bold = html`<b>${'<i>&"\'</i>'}</b>`;
    expect(bold.text).toBe('<b>&lt;i&gt;&amp;&quot;&#39;&lt;/i&gt;</b>');
    expect(html`<p>${[bold, 3, null]}</p>`.text).toBe(`<p>${bold.text}3</p>`);
  });

  it('lets no text open a tag or close an attribute', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(escapeText(text)).not.toMatch(/[<>"']/);
      }),
      { numRuns: 100 },
    );
  });
});

describe('documentText', () => {
  it('names its style and script by hash in the policy', async () => {
    // SHA-256 of the empty text and of "abc": FIPS 180-2 appendix B.1, in base64.
    const ABC = 'ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=';
    const page = await documentText({ title: 't', style: 'abc', script: 'abc', body: html`<p>x</p>` });
    expect(page).toContain(`style-src 'sha256-${ABC}'`);
    expect(page).toContain(`script-src 'sha256-${ABC}'`);
    expect(page).toContain("default-src 'none'");
  });

  it('allows no script when there is none, and cannot be closed from inside the script', async () => {
    const none = await documentText({ title: 't', style: '', script: '', body: html`` });
    expect(none).toContain("script-src 'none'");
    expect(none).not.toContain('<script');
    const sly = await documentText({ title: 't', style: '', script: 'a="</script><b>"', body: html`` });
    expect(sly.match(/<\/script/g)).toHaveLength(1);
  });
});
