import { parseArgs, type ParseArgsConfig } from 'node:util';
import { refusal } from '../../core/refusal.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/** Reads a command's arguments. Refuses an unknown option, a missing value, and too few or too many files. */
export function optionsOf<T extends Options>(args: readonly string[], options: T, usage: string, files: number) {
  const mend = `Usage: stillplate ${usage}`;
  try {
    const read = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    if (read.positionals.length !== files)
      throw refusal({ what: read.positionals.length < files ? 'A file is missing' : `“${read.positionals[files]}” is one argument too many`, mend });
    return { values: read.values, file: read.positionals[0] ?? '' };
  } catch (error) {
    if (error instanceof TypeError) throw refusal({ what: error.message.split('. To specify')[0] ?? error.message, mend });
    throw error;
  }
}
