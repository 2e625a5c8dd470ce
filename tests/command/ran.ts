import { run } from '../../electron/command/run.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process, relative paths from `folder`, with `input` on its standard input. */
export async function ran(args: readonly string[], folder = process.cwd(), input = ''): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(args, {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    folder,
    input: () => Promise.resolve(input),
  });
  return { code, out: out.join('\n'), err: err.join('\n') };
}
