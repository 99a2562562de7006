/** What the command line tells a coach to type, and where the desk has it. */
const SAYINGS: readonly (readonly [typed: RegExp, here: string])[] = [
  [/"pressure-plan new" writes a commented template/, 'Chart a snap of it, or add a sheet under Sheets'],
  [/"pressure-plan adopt [^"]*" drafts it from the values/, 'add it under Sheets'],
  [/; name the sheet with --live <file>/, ': chart a snap of tonight first'],
  [/pressure-plan report [^\n]*/, 'Plan, "Work out the plan"'],
  [/pressure-plan review [^\n]*/, 'that week\'s Monday, "Review the game"'],
  [/"pressure-plan check" lists all/, 'Chart lists those of each sheet'],
];

/** A message as the desk says it: with a view to turn to in place of a command to type. */
export function deskWords(message: string): string {
  return SAYINGS.reduce((words, [typed, here]) => words.replace(typed, here), message);
}
