import type { Command } from 'commander';
import { UserProblem } from '../season/user-problem.ts';
import { EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';

/** Shells a completion can be written for. */
const SHELLS = ['bash', 'zsh', 'fish'] as const;

/**
 * Prints what a shell completes after the program's name: its commands, the flags of each, and otherwise files and
 * folders.
 *
 * @throws UserProblem when the shell is not one of those known
 */
export function completion(shell: string, program: Command, terminal: Terminal): number {
  const commands = program.commands.map((command) => ({
    name: command.name(),
    words: command.description(),
    flags: command.options.flatMap(({ long }) => long ?? []),
  }));
  if (shell === 'fish') terminal.out(fishScript(commands));
  else if (shell === 'bash') terminal.out(bashScript(commands));
  else if (shell === 'zsh') terminal.out(`autoload -U +X bashcompinit && bashcompinit\n${bashScript(commands)}`);
  else throw new UserProblem('usage', `completion knows ${SHELLS.join(', ')}, got "${shell}"`);
  return EXIT.fine;
}

interface Completed {
  readonly name: string;
  readonly words: string;
  readonly flags: readonly string[];
}

function bashScript(commands: readonly Completed[]): string {
  const cases = commands.map(({ name, flags }) => `    ${name}) words="${flags.join(' ')}" ;;`);
  return `_pressure_plan() {
  local word="\${COMP_WORDS[COMP_CWORD]}" words=""
  case "\${COMP_WORDS[1]}" in
${cases.join('\n')}
  esac
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W "${commands.map(({ name }) => name).join(' ')}" -- "$word"))
  elif [[ "$word" == -* ]]; then
    COMPREPLY=($(compgen -W "$words" -- "$word"))
  else
    COMPREPLY=($(compgen -f -- "$word"))
  fi
}
complete -o filenames -F _pressure_plan pressure-plan
`;
}

function fishScript(commands: readonly Completed[]): string {
  const quoted = (text: string) => `'${text.replaceAll("'", "\\'")}'`;
  const lines = commands.flatMap(({ name, words, flags }) => [
    `complete -c pressure-plan -n __fish_use_subcommand -a ${name} -d ${quoted(words)}`,
    ...flags.map((flag) => `complete -c pressure-plan -n '__fish_seen_subcommand_from ${name}' -l ${flag.slice(2)}`),
  ]);
  return `${lines.join('\n')}\n`;
}
