import { parseArgs, type ParseArgsConfig } from 'node:util';
import { refusal } from '../../core/refusal.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/** Reads a command's arguments. Refuses an unknown option, a missing value, and too few or too many files. */
export function optionsOf<T extends Options>(args: readonly string[], options: T, usage: string, files: number) {
  const mend = `Usage: stillplate ${usage}`;
  try {
    const read = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    if (read.positionals.length !== files)
      throw refusal({
        what:
          read.positionals.length < files
            ? 'A file is missing'
            : `“${read.positionals[files]}” is one argument too many`,
        mend,
      });
    return { values: read.values, file: read.positionals[0] ?? '' };
  } catch (error) {
    if (!(error instanceof TypeError && 'code' in error)) throw error;
    const [name = ''] = /--?[\w-]+/.exec(error.message) ?? [];
    const words = faults[String(error.code)];
    throw refusal({ what: words ? words(name) : error.message, mend });
  }
}

/** Words for what Node's reader of arguments finds wrong. */
const faults: Readonly<Record<string, (name: string) => string>> = {
  ERR_PARSE_ARGS_UNKNOWN_OPTION: (name) => `There is no option “${name}” here`,
  ERR_PARSE_ARGS_INVALID_OPTION_VALUE: (name) =>
    `“${name}” is given without its value, or with one that it does not take; a value that begins with - is written ${name}=-5`,
};
