import type { Role } from '../../game/call-library.ts';

/** What the staff calls a role; its id where it is not one of our eleven. */
export function roleTitle(id: string, roles: readonly Role[]): string {
  return roles.find((role) => role.id === id)?.title ?? id;
}
