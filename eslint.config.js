import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

/** What core may not know: the clock, chance without a seed, the machine, the page. Its types are kept out by core/tsconfig.json too. */
const notInCore = [
  ['Date', 'core has no clock: a date comes from the document'],
  ['performance', 'core has no clock'],
  ['setTimeout', 'core has no clock'],
  ['setInterval', 'core has no clock'],
  ['process', 'core runs in a page as well as in Node'],
  ['Buffer', 'core runs in a page as well as in Node: use Uint8Array'],
  ['require', 'core runs in a page as well as in Node'],
  ['global', 'core runs in a page as well as in Node'],
  ['console', 'core says what it has to say in its result'],
  ['document', 'core knows no page (a document is handed in by a parameter)'],
  ['window', 'core knows no page'],
  ['self', 'core knows no page'],
  ['fetch', 'core reaches no network'],
  ['crypto', 'core has no chance without a seed; hashes come from @noble/hashes'],
].map(([name, message]) => ({ name, message }));

export default defineConfig(
  { ignores: ['node_modules/', 'build/bundled/', 'out/', 'core/checks/generated.ts'] },
  tseslint.configs.recommended,
  {
    rules: {
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-var': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      'no-console': 'off',
      // The compiler finds unused things too; this one knows the leading _ of what is taken on purpose and left.
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-explicit-any': 'error',
      // `!` says that an index was checked, in kernels and on maps that geometry filled.
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  {
    files: ['{core,electron,renderer,tests,build}/**/*.{ts,tsx}'],
    languageOptions: {
      parserOptions: {
        project: ['core/tsconfig.json', 'electron/tsconfig.json', 'renderer/tsconfig.json', 'tests/tsconfig.json'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      // The slips that only types show: a promise nobody waits for, a promise where a value is meant.
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/only-throw-error': 'error',
    },
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...notInCore],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'core has no chance without a seed' },
        { object: 'globalThis', property: 'Date', message: 'core has no clock' },
        { object: 'globalThis', property: 'process', message: 'core runs in a page as well as in Node' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: "CallExpression[callee.property.name='toLocaleString']",
          message: 'Prints by the language of the machine: use quantity/format-quantity.ts',
        },
        {
          selector: "CallExpression[callee.property.name='localeCompare']",
          message: 'Sorts by the language of the machine: compare with < and >',
        },
        { selector: "NewExpression[callee.name='Intl']", message: 'Prints by the language of the machine' },
      ],
    },
  },
  {
    // Messages of pages come in at one place.
    files: ['electron/**/*.ts'],
    ignores: ['electron/window/ipc.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          paths: [
            { name: 'electron', importNames: ['ipcMain'], message: 'ipcMain is named in electron/window/ipc.ts only' },
          ],
        },
      ],
    },
  },
  {
    files: ['**/*.cjs'],
    languageOptions: { sourceType: 'commonjs' },
    rules: { '@typescript-eslint/no-require-imports': 'off' },
  },
);
