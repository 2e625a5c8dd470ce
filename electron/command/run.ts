import { Refusal, refusalLine } from '../../core/refusal.ts';
import { CannotWrite } from '../host/write-file.ts';
import { helpText } from './help.ts';
import { exit, type Terminal } from './terminal.ts';
import { verbs } from './verbs.ts';

const terminal: Terminal = {
  out: (text) => process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
  err: (text) => process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
  folder: process.cwd(),
};

/** Runs one command line (without `node` and the script) and gives its exit code. Never throws for bad input. */
export async function run(args: readonly string[], on: Terminal = terminal): Promise<number> {
  const [verb, ...rest] = args;
  if (verb === undefined || verb === 'help' || verb === '--help' || verb === '-h') {
    on.out(helpText(verb === 'help' ? rest[0] : undefined));
    return exit.passes;
  }
  const command = Object.hasOwn(verbs, verb) ? verbs[verb] : undefined;
  try {
    if (!command) throw new Refusal([{ what: `There is no command “${verb}”`, mend: `Use one of: ${Object.keys(verbs).join(', ')}; "stillplate help" says what each does.` }]);
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
