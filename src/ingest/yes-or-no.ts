/** What a cell of a yes-or-no column says, in any of the usual ways. */
export function flagOf(text: string): 'yes' | 'no' | undefined {
  if (/^(?:1|y|yes|true|x)$/i.test(text)) return 'yes';
  return /^(?:0|n|no|false)$/i.test(text) ? 'no' : undefined;
}
