import { CORE_SCHEMA, FAILSAFE_SCHEMA, load } from 'js-yaml';
import { isTooLong } from './yaml-limits.ts';
import type { YamlScalars } from './yaml-scalars.ts';

/** What a plain text holds, or that it is not plain (or not well-formed) and has to be read with all care. */
export type PlainReading = { readonly kind: 'value'; readonly value: unknown } | { readonly kind: 'not plain' };

const NOT_PLAIN: PlainReading = { kind: 'not plain' };

/**
 * The quick reading of a YAML text that has nothing but the plain forms our settings are written in. The full reading in
 * yaml-file.ts costs three times as much, and stays the only one that names faults. Of a text that is read here both
 * readings give the same value; tests hold them to it.
 *
 * @see https://yaml.org/spec/1.2.2/
 */
export function readPlainYaml(text: string, scalars: YamlScalars): PlainReading {
  if (!isPlainYaml(text)) return NOT_PLAIN;
  try {
    return { kind: 'value', value: load(text, { schema: scalars === 'core' ? CORE_SCHEMA : FAILSAFE_SCHEMA }) };
  } catch {
    return NOT_PLAIN;
  }
}

/** Whether every line of a text is blank, a comment, or one of the plain forms: key, item, value, all on one line. */
export function isPlainYaml(text: string): boolean {
  return !isTooLong(text) && !FOREIGN.test(text) && !OTHER_LINE.test(withoutCollections(text));
}

/** Stands for a list or a group on one line; no text that is read here may hold the character. */
const COLLECTED = '\u0001';

/** That character, and the breaks of a line that not every reader takes for one. */
const FOREIGN = new RegExp(`\\r(?!\\n)|[${COLLECTED}\\u2028\\u2029]`);

/** How deep lists and groups lie in one another on one line. */
const LEVELS = 3;

/** The text with a mark for every list and group on one line, from the innermost outwards. */
function withoutCollections(text: string): string {
  let flat = text;
  for (let level = 0; level < LEVELS && /[\]}]/.test(flat); level++) flat = flat.replace(FLAT_COLLECTION, COLLECTED);
  return flat;
}

/** Letters beyond ASCII, and printers' dashes, quotes and dots: nothing that any reader could take for white space. */
const WIDE = '\\u00a1-\\u00ac\\u00ae-\\u024f\\u2010-\\u2027';

/** Quoted text on one line, without a quote of its kind or a backslash in it. */
const QUOTED = `'[ -&(-~${WIDE}]*'|"[ !#-\\[\\]-~${WIDE}]*"`;

/** Numbers of endless figures and with an exponent, which may be too large for one, are left to the full reading. */
const FIGURE = '-?[0-9](?![0-9]{15}|[0-9.]*[eE][-+]?[0-9])';

/** Text without quotes begins with a letter, a figure or a minus before one. */
const FIRST = `(?:[A-Za-z_(${WIDE}]|${FIGURE})`;

/** A key: letters, digits and the marks names are written with. As a key, what stands for no value is no text. */
const KEY_PART = `[\\w./()+%'${WIDE}-]`;
const KEY = `(?:(?!(?:null|Null|NULL) *:)${FIRST}${KEY_PART}*(?: +${KEY_PART}+)*|${QUOTED})`;

/** Text in a list or group on one line: what ends it there, colons, hashes and quotes are left out. */
const INNER_PART = `(?:[!$-&(-+./0-9;-Z^-z|~${WIDE}-]|'(?=[A-Za-z]))`;
const INNER = `(?:${FIRST}${INNER_PART}*(?: +${INNER_PART}+)*|${QUOTED}|${COLLECTED})`;

/** Between two parts on one line, or before the end of them. */
const COMMA = ' *(?:, *(?=[^ \\]}])|(?=[\\]}]))';

const FLAT_COLLECTION = new RegExp(`\\[ *(?:${INNER}${COMMA})*\\]|\\{ *(?:${KEY}: +${INNER}${COMMA})*\\}`, 'g');

/** Text on a line of its own; a colon stands before a letter or digit, as in 7:32. */
const TEXT_PART = `(?:[!"$-9;-\\[\\]-~${WIDE}]|:(?=[A-Za-z0-9]))`;
const VALUE = `(?:${FIRST}${TEXT_PART}*(?: +${TEXT_PART}+)*|${QUOTED}|${COLLECTED})`;

/** Thirty columns of indent keep the nesting below what the full reading refuses. */
const INDENT = ' {0,30}';
const COMMENT = `(?:^| +)#[ -~${COLLECTED}${WIDE}]*`;
const PLAIN_LINE = `${INDENT}(?:(?:- )?${KEY}:(?: +${VALUE})?|-(?: ${VALUE})?)?(?:${COMMENT})? *$`;

/** The beginning of a line that is none of the plain ones. */
const OTHER_LINE = new RegExp(`^(?!${PLAIN_LINE})`, 'm');
