import { Refusal, refusal, refusalLine } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { CannotWrite } from '../host/write-file.ts';
import { helpText } from './help.ts';
import { exit, type Terminal } from './terminal.ts';
import { verbs, type Verb } from './verbs.ts';

const terminal: Terminal = {
  out: (text) => process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
  err: (text) => process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
  folder: process.cwd(),
  input: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString('utf8');
  },
};

/** Runs one command line (without `node` and the script) and gives its exit code. Never throws for bad input. */
export async function run(args: readonly string[], on: Terminal = terminal): Promise<number> {
  const [verb, ...rest] = args;
  try {
    if (verb === undefined || verb === 'help' || verb === '--help' || verb === '-h') {
      const [about] = verb === 'help' ? rest : [];
      if (about !== undefined) commandOf(about);
      on.out(helpText(about));
      return exit.passes;
    }
    if (verb === '--version') {
      on.out(`Stillplate ${programVersion}`);
      return exit.passes;
    }
    const command = commandOf(verb);
    if (rest.includes('--help') || rest.includes('-h')) {
      on.out(helpText(verb));
      return exit.passes;
    }
    return await command.run(rest, on);
  } catch (error) {
    if (error instanceof Refusal) {
      for (const text of error.all) on.err(refusalLine(text));
      return exit.badInput;
    }
    if (error instanceof CannotWrite) {
      on.err(error.message);
      return exit.cannotWrite;
    }
    throw error;
  }
}

function commandOf(name: string): Verb {
  const command = Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (command) return command;
  throw refusal({
    what: `There is no command “${name}”`,
    mend: `Use one of: ${Object.keys(verbs).join(', ')}; "stillplate help" says what each does.`,
  });
}
