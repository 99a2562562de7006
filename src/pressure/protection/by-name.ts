/** Order by role id, for men who are level in everything that matters: it is always the same man, however they are listed. */
export function byName(a: { readonly role: string }, b: { readonly role: string }): number {
  return a.role === b.role ? 0 : a.role < b.role ? -1 : 1;
}
