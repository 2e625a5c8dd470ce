// Tools of the tests. The PDF tests read notes back with poppler and qpdf, two independent readers. Where they are absent and this is a
// Debian machine that lets us, install them; otherwise say what to do. The tests fail without them, they do not skip.
// The tests of the solver compare with CHOLMOD of SuiteSparse, compiled against its headers: they need those and a compiler.
// On Debian poppler brings libnss3 along, which the browser that a package carries (tests/browser) needs as well.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const has = (command) => spawnSync('sh', ['-c', `command -v ${command}`]).status === 0;
const wanted = { 'poppler-utils': ['pdftotext', 'pdfinfo', 'pdffonts', 'pdfdetach', 'pdftoppm'], qpdf: ['qpdf'] };
const isThere = {
  ...Object.fromEntries(Object.entries(wanted).map(([name, commands]) => [name, () => commands.every(has)])),
  'libsuitesparse-dev': () => existsSync('/usr/include/suitesparse/cholmod.h'),
  gcc: () => has('gcc'),
};
const missing = () => Object.keys(isThere).filter((name) => !isThere[name]());
const absent = missing();

if (absent.length > 0) {
  const apt = `apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends ${absent.join(' ')}`;
  const asRoot = process.getuid?.() === 0 ? ['sh', '-c', apt] : has('sudo') ? ['sudo', '-n', 'sh', '-c', apt] : null;
  if (asRoot && has('apt-get')) {
    console.log(`Installing ${absent.join(' and ')} for the tests.`);
    spawnSync(asRoot[0], asRoot.slice(1), { stdio: 'ignore' });
  }
  const still = missing();
  if (still.length > 0)
    console.log(
      `The tests need ${still.join(' and ')}: install them (Debian: apt-get install ${still.join(' ')}), or those tests fail.`,
    );
}
