// Which way imports may point. Data flows from left to right; nothing to the right is known on the left.

/** Folders and files of core, from left to right. `types`: what may be named as a type only. */
const order = [
  ['refusal.ts', 'finding.ts', 'source.ts', 'counted-random.ts', 'arithmetic.ts', 'once.ts'],
  ['quantity', 'derive'],
  ['catalogue'],
  ['document'],
  // What the desktop does for the window, as types and schemas. It knows documents, no plate.
  ['host'],
  // Numerical methods know no plate: they stand left of the loads, which ask them for the forces in the grid of tubes.
  // A record of a test or of the sea, read and reduced to numbers, needs no plate either.
  ['water', 'solve', 'record', 'tank', 'motion'],
  ['geometry'],
  ['mass'],
  ['loads'],
  ['fixings'],
  // Cycles, S-N curves and damage: it knows stresses and counts, no plate.
  ['fatigue'],
  // What checks read, gathered. It is made in appraise.ts, so that the types are known to the left of what makes them.
  ['model.ts', 'once-per-model.ts'],
  // The plate as one structure: meshed from the model, solved by the methods in solve, and what came out.
  // What the sea does to the steel, and what protects it: areas, currents, pairs of metals.
  // How it is put down and got back: ropes, floats, releases, the lift stage by stage.
  ['plate', 'hydrodynamics', 'durability', 'recovery'],
  ['checks'],
  ['quantities.ts', 'limit-states.ts', 'place-words.ts', 'merged-findings.ts', 'print-in.ts'],
  ['appraise.ts'],
  ['result.ts'],
  // Revisions of a note, what was said of them, and what changed between two.
  ['issue'],
  ['options'],
  ['note'],
  // The program proves itself where it runs, and writes it down.
  ['selfcheck'],
  // What the shop cuts and drills, written out.
  ['fabrication'],
  // How the work is done, theory as the checks' data say it, limits and words: read in the window, printed as a book.
  ['handbook'],
  // The solids that the window draws, and what it is told after each edit.
  ['scene'],
  ['engine'],
];

const path = (name) => `^core/${name.replace('.', '\\.')}${name.endsWith('.ts') ? '$' : '/'}`;
const pathOfAny = (names) => names.map(path).join('|');

const leftToRight = order.slice(0, -1).map((names, i) => ({
  name: `left-of-${order[i + 1][0].replace('.ts', '')}`,
  comment: `${names.join(', ')} must not know what is made of it further right (see "order" in .dependency-cruiser.cjs).`,
  severity: 'error',
  from: { path: pathOfAny(names) },
  to: { path: pathOfAny(order.slice(i + 1).flat()) },
}));

module.exports = {
  forbidden: [
    ...leftToRight,
    {
      name: 'core-has-a-place',
      comment: 'A new folder or file at the top of core needs its place in the order of this file.',
      severity: 'error',
      from: {},
      to: { path: '^core/', pathNot: pathOfAny(order.flat()) },
    },
    {
      name: 'core-is-pure',
      comment: 'core runs in a page, a worker and Node alike: it knows neither desktop nor window nor the tests.',
      severity: 'error',
      from: { path: '^core/' },
      to: { path: '^(electron|renderer|tests|build|samples)/' },
    },
    {
      name: 'core-has-no-node',
      comment: 'core has no clock, files or processes: what it needs of them is handed in.',
      severity: 'error',
      from: { path: '^core/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-packages',
      comment: 'A package in core runs everywhere and stays pinned in every result: add one on purpose, here.',
      severity: 'error',
      from: { path: '^core/' },
      to: {
        path: 'node_modules/',
        pathNot: 'node_modules/(mathjs|zod|clipper2-ts|canonicalize|d3-dsv|earcut|@noble/hashes)/',
      },
    },
    {
      name: 'whole-mathjs-at-the-unit-edge',
      comment:
        'mathjs in full is large and slow: the reading of units and the dimension check take it, the rest mathjs/number.',
      severity: 'error',
      from: { path: '^(core|electron|renderer)/', pathNot: '^core/(derive/dimensions|quantity/units)\\.ts$' },
      to: {
        path: 'node_modules/mathjs/',
        pathNot: 'node_modules/mathjs/.*[nN]umber',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'dimensions-in-tests-only',
      comment: 'derive/dimensions.ts brings mathjs in full; the program never needs it.',
      severity: 'error',
      from: { path: '^(core|electron|renderer)/' },
      to: { path: '^core/derive/dimensions\\.ts$' },
    },
    {
      name: 'desktop-and-window-apart',
      comment: 'electron and renderer meet only in the typed host interface of core.',
      severity: 'error',
      from: { path: '^(electron|renderer)/' },
      to: { path: '^(electron|renderer)/', pathNot: '^$1/' },
    },
    {
      name: 'program-without-tests',
      comment: 'The program does not import tests or build scripts (the starters bundle on first use).',
      severity: 'error',
      from: { path: '^(electron|renderer)/', pathNot: '^electron/(command/stillplate|start)\\.mjs$' },
      to: { path: '^(tests|build)/' },
    },
    {
      name: 'electron-at-the-edge',
      comment:
        'The host runs on plain Node as well: Electron is known to the main process, its windows and the preload only.',
      severity: 'error',
      from: { path: '^(core|electron|renderer)/', pathNot: '^electron/(main\\.ts|preload\\.ts|window/)' },
      to: { path: 'node_modules/electron/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no-cycle',
      comment: 'Files that need each other are one idea, or a third file waits to be made. Types may name each other.',
      severity: 'error',
      from: { pathNot: 'node_modules' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'resolves',
      comment: 'An import that leads nowhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'declared-packages',
      comment: 'A package that runs in the program is declared in package.json under dependencies.',
      severity: 'error',
      from: { path: '^(core|electron|renderer)/' },
      // Electron is what runs the desktop side, no package in it.
      to: {
        dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown', 'undetermined'],
        pathNot: 'node_modules/electron/',
      },
    },
  ],
  options: {
    tsConfig: { fileName: 'core/tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^build/bundled/' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
