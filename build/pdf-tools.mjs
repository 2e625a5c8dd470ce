// The PDF tests read notes back with poppler and qpdf, two independent readers. Where they are absent and this is a
// Debian machine that lets us, install them; otherwise say what to do. The tests fail without them, they do not skip.
// On Debian poppler brings libnss3 along, which the browser that a package carries (tests/browser) needs as well.
import { spawnSync } from 'node:child_process';

const has = (command) => spawnSync('sh', ['-c', `command -v ${command}`]).status === 0;
const wanted = { 'poppler-utils': ['pdftotext', 'pdfinfo', 'pdffonts', 'pdfdetach', 'pdftoppm'], qpdf: ['qpdf'] };
const absent = Object.keys(wanted).filter((name) => !wanted[name].every(has));

if (absent.length > 0) {
  const apt = `apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends ${absent.join(' ')}`;
  const asRoot = process.getuid?.() === 0 ? ['sh', '-c', apt] : has('sudo') ? ['sudo', '-n', 'sh', '-c', apt] : null;
  if (asRoot && has('apt-get')) {
    console.log(`Installing ${absent.join(' and ')} for the PDF tests.`);
    spawnSync(asRoot[0], asRoot.slice(1), { stdio: 'ignore' });
  }
  const still = absent.filter((name) => !wanted[name].every(has));
  if (still.length > 0) console.log(`The PDF tests need ${still.join(' and ')}: install them (Debian: apt-get install ${still.join(' ')}), or those tests fail.`);
}
