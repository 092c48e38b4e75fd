#!/usr/bin/env node
import { nearest } from '../diagnostics/nearest.js';
import { UsageError } from './arguments.js';

/** A command's own file is loaded only when it is called. */
interface Command {
  readonly about: string;
  readonly load: () => Promise<{ readonly run: (args: readonly string[]) => Promise<number> }>;
}

const COMMANDS: Readonly<Record<string, Command>> = {
  build: { about: 'build lessons into out/', load: () => import('./build.js') },
  check: { about: 'print what is wrong, with its place and what to do', load: () => import('./check.js') },
  explain: { about: "print one number's whole story", load: () => import('./explain.js') },
  foods: { about: 'find a food, with its measures and nutrients', load: () => import('./foods.js') },
  calc: { about: 'work out one formula, with its working and source', load: () => import('./calc.js') },
};

const HELP = `platework turns nutrition lessons written in Markdown into slides, worksheets and handouts.

  platework <command> [words] [options]

${Object.entries(COMMANDS)
  .map(([name, command]) => `  ${name.padEnd(9)}${command.about}`)
  .join('\n')}

  platework <command> --help says more about one.
`;

async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    process.stdout.write(HELP);
    return name === undefined ? 2 : 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) {
    const near = nearest(name, Object.keys(COMMANDS))[0];
    throw new UsageError(
      `There is no command "${name}".${near ? ` Did you mean ${near}?` : ''} platework --help lists them.`,
    );
  }
  return (await command.load()).run(rest);
}

// A reader that stops reading (`| head`) is no mistake.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    if (error instanceof UsageError) {
      process.stderr.write(`${error.message}\n`);
      process.exitCode = 2;
      return;
    }
    const fault = error as NodeJS.ErrnoException;
    if (typeof fault?.code === 'string' && /^E[A-Z]+$/.test(fault.code) && fault.path) {
      process.stderr.write(
        `${fault.path} cannot be read or written (${fault.code}). Look at its permissions and the free space.\n`,
      );
      process.exitCode = 1;
      return;
    }
    process.stderr.write(
      `This is a mistake in platework, not in your lesson. Please report it with this text:\n${fault?.stack ?? String(error)}\n`,
    );
    process.exitCode = 70;
  },
);
