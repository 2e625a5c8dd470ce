import { readFile } from 'node:fs/promises';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { Refusal } from '../../core/refusal.ts';
import { resultOf } from '../../core/result.ts';
import { seeded } from '../../tests/geometry/seeded.ts';

export interface FuzzReport {
  readonly documents: number;
  readonly refused: number;
  readonly appraised: number;
  readonly quantities: number;
  /** The document that took longest, for a look at why. */
  readonly slowest: { readonly seed: number; readonly seconds: number };
  /** What went wrong, with the seed that brings it back. */
  readonly failures: readonly string[];
}

type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

/** What fingers and programs put in a file's fields. */
const junk: readonly Json[] = [
  ...[
    '',
    ' ',
    '0 mm',
    '-6 mm',
    'NaN',
    '1e400 mm',
    '1e-400 mm',
    '10',
    '10 kg',
    '10,5 mm',
    '1,000 mm',
    '3/8 in',
    '0/0 in',
    '5 ton',
    '40 lb',
    '12 furlong',
    '٣ mm',
    '１０ mm',
    '𝟙 mm',
  ],
  ...[
    0,
    -0,
    -1,
    1,
    1e308,
    -1e308,
    1e-320,
    0.1,
    1e6,
    true,
    false,
    null,
    [],
    {},
    [null],
    { si: 1 },
    { si: 1, typed: '2 mm' },
    'A1',
    'base',
    '\u0000',
    '\u202E mm',
    'x'.repeat(5000),
  ],
];

/**
 * Changes fields of the samples at random and reads them back in: each must be refused in words or give a result with
 * no NaN and no infinity in it. Then quantities of random letters. `count` documents, from a seed.
 */
export async function fuzz(count: number, seed: number): Promise<FuzzReport> {
  const samples = await Promise.all(
    ['small', 'middle', 'inch'].map(
      async (name) => JSON.parse(await readFile(`samples/${name}.stillplate.json`, 'utf8')) as Json,
    ),
  );
  const failures: string[] = [];
  let refused = 0;
  let appraised = 0;
  let slowest = { seed, seconds: 0 };
  for (let n = 0; n < count; n++) {
    const random = seeded(seed + n);
    const text = changedText(samples[(seed + n) % samples.length]!, random);
    const start = performance.now();
    try {
      const raw = readDocumentText(text);
      const document = readDocument(raw);
      const ids = [null, ...document.options.map(({ id }) => id)];
      const bad = firstBad(
        resultOf(appraise(raw, document, ids[Math.floor(random() * ids.length)]!), { every: true }),
        '',
      );
      if (bad) failures.push(`seed ${seed + n}: ${bad}`);
      appraised++;
    } catch (error) {
      if (!(error instanceof Refusal))
        failures.push(
          `seed ${seed + n}: ${error instanceof Error ? (error.stack ?? error.message).split('\n').slice(0, 3).join(' ') : String(error)}`,
        );
      else if (error.all.some(({ what, mend }) => !what || !mend))
        failures.push(`seed ${seed + n}: a refusal without words`);
      refused++;
    }
    const seconds = (performance.now() - start) / 1000;
    if (seconds > slowest.seconds) slowest = { seed: seed + n, seconds };
  }
  const quantities = 20 * count;
  const random = seeded(seed);
  for (let n = 0; n < quantities; n++) {
    const text = randomText(random);
    try {
      const { si } = readQuantity(text, 'length');
      if (!Number.isFinite(si)) failures.push(`quantity ${JSON.stringify(text)} read as ${si}`);
    } catch (error) {
      if (!(error instanceof Refusal)) failures.push(`quantity ${JSON.stringify(text)}: ${String(error)}`);
    }
  }
  return { documents: count, refused, appraised, quantities, slowest, failures };
}

/** One or two fields changed, left out or doubled; now and then the text is cut. */
function changedText(sample: Json, random: () => number): string {
  const document = structuredClone(sample);
  const changes = 1 + Math.floor(2 * random());
  for (let i = 0; i < changes; i++) change(document, random);
  const text = JSON.stringify(document);
  return random() < 0.03 ? text.slice(0, Math.floor(text.length * random())) : text;
}

function change(node: Json, random: () => number): void {
  if (typeof node !== 'object' || node === null) return;
  const keys = Object.keys(node);
  const key = keys[Math.floor(random() * keys.length)];
  const holder = node as Record<string, Json>;
  if (key === undefined) return;
  const inner = holder[key]!;
  if (typeof inner === 'object' && inner !== null && random() < 0.85) return change(inner, random);
  const dice = random();
  const scale = 10 ** (2 * random() - 1);
  if (dice < 0.7 && typeof inner === 'string' && /^[\d.]+ /.test(inner))
    holder[key] = inner.replace(/^[\d.]+/, (digits) => (Number(digits) * scale).toPrecision(4));
  else if (dice < 0.5 && typeof inner === 'number')
    holder[key] = Number.isInteger(inner) ? Math.round(inner * scale) : inner * scale;
  else if (dice < 0.75) delete holder[key];
  else if (dice < 0.8) holder[`${key}x`] = inner;
  else holder[key] = structuredClone(junk[Math.floor(random() * junk.length)]!);
}

/** Path of the first number in a result that is NaN or infinite. */
function firstBad(value: unknown, path: string): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const bad = firstBad(inner, `${path}.${key}`);
    if (bad) return bad;
  }
  return undefined;
}

const letters = [...'0123456789.,/+-e *^µ"\'()·²³', 'mm', 'in', 'ft', 'm', 'kg', '∞', '½', ' ', '10', '3/8'];
const randomText = (random: () => number): string =>
  Array.from({ length: 1 + Math.floor(8 * random()) }, () => letters[Math.floor(random() * letters.length)]!).join('');
