import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import type { LowerTriangle } from './lower-triangle.ts';

export type Ordering = 'amd' | 'metis';

/** One round: milliseconds, the scaled residual of its solution, entries of its factor, and bytes in use. */
export interface CholmodRound {
  readonly analyse: number;
  readonly factor: number;
  readonly refactor: number;
  readonly solve: number;
  readonly again: number;
  readonly residual: number;
  readonly entries: number;
  readonly bytes: number;
}

/** CHOLMOD with one matrix and one right-hand side, in a process of its own with one thread. */
export interface Cholmod {
  round(): Promise<CholmodRound>;
  solution(): Promise<Float64Array>;
  end(): void;
}

const folder = 'build/bundled/cholmod';

/** Whether CHOLMOD can be built against here: a C compiler and the headers. `apt-get install gcc libsuitesparse-dev`. */
export function builtCholmod(): boolean {
  mkdirSync(folder, { recursive: true });
  try {
    execFileSync('gcc', ['-O2', '-o', `${folder}/solve`, 'build/cholmod/solve.c', '-lcholmod', '-lm'], {
      stdio: 'pipe',
    });
    return true;
  } catch {
    return false;
  }
}

/** Starts it; builtCholmod() must have said yes. name: of the file that hands the matrix over. */
export function startCholmod(
  name: string,
  { start, row, entry }: LowerTriangle,
  f: Float64Array,
  ordering: Ordering,
): Cholmod {
  const file = `${folder}/${name}.bin`;
  writeFileSync(
    file,
    Buffer.concat(
      [BigInt64Array.of(BigInt(f.length), BigInt(entry.length)), start, row, entry, f].map(
        ({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength),
      ),
    ),
  );
  // One thread, and OpenBLAS free to choose its kernels.
  const { OPENBLAS_CORETYPE: _core, OPENBLAS_L2_SIZE: _cache, ...env } = process.env;
  const child = spawn(`${folder}/solve`, [file, ordering], {
    env: { ...env, OPENBLAS_NUM_THREADS: '1', OMP_NUM_THREADS: '1' },
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const ask = async (line: string): Promise<string> => {
    child.stdin.write(`${line}\n`);
    const { value, done } = await lines.next();
    if (done) throw new Error(`CHOLMOD ended while it had ${name}`);
    return value;
  };
  return {
    async round() {
      const [analyse, factor, refactor, solve, again, residual, entries, bytes] = (await ask('round'))
        .split(' ')
        .map(Number);
      return {
        analyse: analyse!,
        factor: factor!,
        refactor: refactor!,
        solve: solve!,
        again: again!,
        residual: residual!,
        entries: entries!,
        bytes: bytes!,
      };
    },
    async solution() {
      await ask(`write ${folder}/${name}.solution`);
      const bytes = await readFile(`${folder}/${name}.solution`);
      return new Float64Array(new Uint8Array(bytes).buffer);
    },
    end: () => child.stdin.end(),
  };
}
