import { resolve } from 'node:path';

/** Document files named on a command line, as paths. The program's own words and switches are passed over. */
export const documentsIn = (args: readonly string[], folder: string): readonly string[] =>
  args.filter((arg) => !arg.startsWith('-') && /\.stillplate(\.json)?$/i.test(arg)).map((arg) => resolve(folder, arg));
