// Makes the pictures of README from the middle sample's note and from the window, so that they stay true. Needs pdftoppm
// (Debian: poppler-utils) and a browser (see tests/browser/browser.ts).
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runTypeScript } from './run-typescript.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'stillplate-'));
const note = join(folder, 'note.pdf');
const { run } = await import('./bundled/command/run.mjs');
await run(['note', join(root, 'samples/middle.stillplate.json'), '--out', note]);

const pages = {
  'note-first-page': /What decides/,
  'note-drawings': /Plan seen from above/,
  'note-check': /Slip under reversing shear: bay/,
};
const count = Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [note], { encoding: 'utf8' }))[1]);
mkdirSync(join(root, 'build/pictures'), { recursive: true });
for (const [name, wanted] of Object.entries(pages)) {
  const page = Array.from({ length: count }, (_, i) => i + 1).find((n) =>
    wanted.test(execFileSync('pdftotext', ['-f', n, '-l', n, note, '-'], { encoding: 'utf8' })),
  );
  if (page === undefined) throw new Error(`No page of the note has ${wanted}`);
  execFileSync('pdftoppm', [
    '-r',
    '80',
    '-png',
    '-singlefile',
    '-f',
    page,
    '-l',
    page,
    note,
    join(root, 'build/pictures', name),
  ]);
  console.log(`Wrote build/pictures/${name}.png (page ${page} of ${count})`);
}
rmSync(folder, { recursive: true });

const { windowPictures } = await runTypeScript('build/window-pictures.ts');
for (const name of await windowPictures(root)) console.log(`Wrote build/pictures/${name}`);
