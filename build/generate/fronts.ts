import { readFile, writeFile } from 'node:fs/promises';

const source = 'build/wasm/fronts.as';
const target = 'core/solve/sparse/fronts-wasm.ts';

/** Compiles the solver's dense kernels; with `check`, only says whether the compiled file is up to date. Gives the exit code. */
export async function generate({ check }: { check: boolean }): Promise<number> {
  const made = moduleSource(await compiled());
  const old = await readFile(target, 'utf8').catch(() => '');
  if (old === made) return 0;
  if (check) {
    console.error(`${target} is stale: run npm run generate.`);
    return 1;
  }
  await writeFile(target, made);
  console.log(`Wrote ${target}.`);
  return 0;
}

/** The module as bytes. Its memory is handed in; it has no data and no allocator of its own. The compiler asks for a file
 *  that ends in .ts; ours ends in .as, since no other tool for TypeScript can read it. */
async function compiled(): Promise<Uint8Array> {
  const { main } = await import('assemblyscript/asc');
  const text = await readFile(source, 'utf8');
  let bytes: Uint8Array | undefined;
  const { error, stderr } = await main(
    `fronts.ts -O3 --runtime stub --importMemory --noAssert --enable simd --outFile fronts.wasm`.split(' '),
    {
      readFile: (name) => (name === 'fronts.ts' ? text : null),
      writeFile: (name, contents) => {
        if (name === 'fronts.wasm' && typeof contents !== 'string') bytes = contents;
      },
    },
  );
  if (error || !bytes) throw new Error(`${source} does not compile:\n${stderr.toString()}`);
  return bytes;
}

const moduleSource = (bytes: Uint8Array): string =>
  [
    `// Made by \`npm run generate\` from ${source}; do not edit. A WebAssembly module, ${bytes.length} bytes.`,
    '// prettier-ignore',
    `export const frontsWasm = '${Buffer.from(bytes).toString('base64')}';`,
    '',
  ].join('\n');
