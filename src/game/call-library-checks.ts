/** What the cross-field rules of defense.yaml look at. */
export interface LibraryToCheck {
  readonly roles: readonly { readonly id: string }[];
  readonly calls: readonly {
    readonly name: string;
    readonly rush: readonly { readonly role: string; readonly way: string; readonly peels: boolean }[];
    readonly cover: readonly { readonly role: string }[];
  }[];
}

/** One broken rule: where in the file, and in words that name the call, the role and the rule. */
export interface LibraryProblem {
  readonly path: (string | number)[];
  readonly message: string;
}

/**
 * Rules of defense.yaml that span several fields: role ids and call names are used once, every call speaks of our roles
 * only, and a man who joins late does not also peel. Whether a call is sound football is judged elsewhere.
 */
export function libraryProblems(library: LibraryToCheck): LibraryProblem[] {
  const roles = library.roles.map(({ id }) => id);
  const names = library.calls.map(({ name }) => name);
  return [
    ...repeats(roles).map((i) => ({ path: ['roles', i, 'id'], message: `role ${roles[i]} is written twice` })),
    ...repeats(names).map((i) => ({ path: ['calls', i, 'name'], message: `call ${names[i]} is written twice` })),
    ...library.calls.flatMap((call, i) => [...strangers(call, i, roles), ...latePeelers(call, i)]),
  ];
}

type CheckedCall = LibraryToCheck['calls'][number];

/** Places of words that were seen before. */
function repeats(words: readonly string[]): number[] {
  return words.flatMap((word, i) => (words.indexOf(word) < i ? [i] : []));
}

function strangers(call: CheckedCall, index: number, roles: readonly string[]): LibraryProblem[] {
  return (['rush', 'cover'] as const).flatMap((part) =>
    call[part].flatMap(({ role }, i) => {
      if (roles.includes(role)) return [];
      const message = `${call.name}, ${part}: ${role} is not one of our roles (${roles.join(', ')})`;
      return [{ path: ['calls', index, part, i, 'role'], message }];
    }),
  );
}

function latePeelers(call: CheckedCall, index: number): LibraryProblem[] {
  return call.rush.flatMap(({ role, way, peels }, i) => {
    if (!(peels && way === 'late_if_back_blocks')) return [];
    const message = `${call.name}, ${role}: a man who joins late when the back blocks cannot also peel with him`;
    return [{ path: ['calls', index, 'rush', i, 'peels'], message }];
  });
}
