// Bundles what runs into build/bundled/: the command line and the desktop side for plain Node or Electron, and the page.
// `node build/bundle.mjs [command] [desktop] [page]`; all three by default. mathjs alone is a thousand files: bundled, the
// command line starts quickly. pdfkit, the reader of PDFs and the fonts stay outside, since they read files beside their own.
import { build } from 'esbuild';
import { copyFile, mkdir, readdir, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { basename, join } from 'node:path';

const root = fileURLToPath(new URL('..', import.meta.url));
const require = createRequire(import.meta.url);

/** Packages that read files beside their own stay outside the bundle and have to lie beside it. */
export const besideTheBundle = ['pdfkit', 'fontkit', 'pdfjs-dist', 'png-js', 'better-sqlite3'];

/** The same bytes wherever the sources lie: a linked node_modules is named as if it were a folder. */
const alike = { preserveSymlinks: true, metafile: true };

const forNode = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  external: [...besideTheBundle, 'electron'],
  ...alike,
  sourcemap: 'linked',
  logLevel: 'warning',
};
const nodeModules = {
  ...forNode,
  outExtension: { '.js': '.mjs' },
  splitting: true,
  format: 'esm',
  // Packages in the older module form ask for require.
  banner: {
    js: "import { createRequire as _createRequire } from 'node:module'; const require = _createRequire(import.meta.url);",
  },
};

const parts = {
  command: async (outdir) => [await build({ ...nodeModules, entryPoints: ['electron/command/run.ts'], outdir })],

  desktop: async (outdir) => {
    const entries = [
      'electron/main.ts',
      'electron/local/serve.ts',
      'electron/host/store/store-worker.ts',
      'electron/host/note-worker.ts',
      'electron/host/verify-worker.ts',
    ];
    const modules = await build({
      ...nodeModules,
      entryPoints: Object.fromEntries(entries.map((entry) => [basename(entry, '.ts'), entry])),
      outdir,
    });
    // A sandboxed preload is one script in the older module form.
    const preload = await build({
      ...forNode,
      entryPoints: ['electron/preload.ts'],
      format: 'cjs',
      outfile: join(outdir, 'preload.cjs'),
    });
    return [modules, preload];
  },

  page: async (outdir) => {
    const page = await build({
      ...alike,
      absWorkingDir: root,
      entryPoints: {
        main: 'renderer/main.tsx',
        'engine-worker': 'renderer/engine/worker.ts',
        'solver-worker': 'renderer/engine/solver-worker.ts',
        'search-worker': 'renderer/engine/search-worker.ts',
        'water-worker': 'renderer/engine/water-worker.ts',
        'gains-worker': 'renderer/engine/gains-worker.ts',
        'record-worker': 'renderer/engine/record-worker.ts',
        'pages-worker': 'renderer/engine/pages-worker.ts',
      },
      outdir,
      bundle: true,
      splitting: true,
      chunkNames: 'parts/[name]-[hash]',
      platform: 'browser',
      target: ['chrome120', 'firefox121', 'safari17'],
      format: 'esm',
      jsx: 'automatic',
      minify: true,
      define: { 'process.env.NODE_ENV': '"production"' },
      external: ['./fonts/*'],
      sourcemap: 'linked',
      logLevel: 'warning',
    });
    const copies = {
      'index.html': 'renderer/index.html',
      'icon.svg': 'renderer/icon.svg',
      'fonts/regular.ttf': '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
      'fonts/italic.ttf': '@expo-google-fonts/source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
      'fonts/semibold.ttf': '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
      'fonts/math.ttf': 'dejavu-fonts-ttf/ttf/DejaVuMathTeXGyre.ttf',
      'pdf-worker.mjs': 'pdfjs-dist/build/pdf.worker.min.mjs',
    };
    await mkdir(join(outdir, 'fonts'), { recursive: true });
    await mkdir(join(outdir, 'samples'), { recursive: true });
    for (const [to, from] of Object.entries(copies))
      await copyFile(from.startsWith('renderer/') ? join(root, from) : require.resolve(from), join(outdir, to));
    for (const file of await readdir(join(root, 'samples')))
      if (file.endsWith('.stillplate.json') || file.endsWith('.csv'))
        await copyFile(join(root, 'samples', file), join(outdir, 'samples', file));
    return [page];
  },
};

/** Bundles the parts named, all by default, into folders of their names. Gives the names of the packages that went in. */
export async function bundle(names = Object.keys(parts), into = join(root, 'build/bundled')) {
  const packages = new Set();
  for (const name of names) {
    const make = parts[name];
    if (!make) throw new Error(`There is no part “${name}”: name one of ${Object.keys(parts).join(', ')}`);
    // Parts of an earlier bundle have other names and would stay.
    await rm(join(into, name), { recursive: true, force: true });
    for (const { metafile } of await make(join(into, name)))
      for (const input of Object.keys(metafile.inputs)) {
        const [, found] = /node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*node_modules\/)/.exec(input) ?? [];
        if (found) packages.add(found);
      }
  }
  return [...packages].sort();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2);
  await bundle(asked.length > 0 ? asked : undefined);
}
