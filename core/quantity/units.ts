import { create, createUnitDependencies, unitDependencies, type Unit } from 'mathjs';

const math = create({ ...unitDependencies, ...createUnitDependencies }, {});
math.createUnit({ ksi: '1000 psi' });

/** Unit words that may be typed, and the mathjs word for each. Anything else is refused by name. */
const words: Readonly<Record<string, string>> = {
  mm: 'mm', cm: 'cm', m: 'm', km: 'km', in: 'in', inch: 'in', inches: 'in', ft: 'ft', feet: 'ft', '"': 'in', um: 'um', 'µm': 'um', 'μm': 'um',
  g: 'g', kg: 'kg', t: 'tonne', tonne: 'tonne', tonnes: 'tonne', lbm: 'lbm', lb: 'lbm', lbs: 'lbm', L: 'L', litre: 'L', litres: 'L',
  N: 'N', kN: 'kN', MN: 'MN', lbf: 'lbf', kip: 'kip', kips: 'kip', kgf: 'kgf',
  Pa: 'Pa', kPa: 'kPa', MPa: 'MPa', GPa: 'GPa', bar: 'bar', mbar: 'mbar', psi: 'psi', ksi: 'ksi',
  s: 's', sec: 's', min: 'minute', h: 'hour', hour: 'hour', hours: 'hour', day: 'day', days: 'day', month: 'month', months: 'month', year: 'year', years: 'year',
  deg: 'deg', '°': 'deg', rad: 'rad', mrad: 'mrad', K: 'K', degC: 'degC', '°C': 'degC', degF: 'degF',
};

/** Words with two meanings in the trade: refused with both. */
const ambiguous: Readonly<Record<string, string>> = {
  ton: 'a short ton is 907.185 kg, a long ton 1016.05 kg, a metric tonne 1000 kg: write kg or t (1000 kg)',
  tons: 'a short ton is 907.185 kg, a long ton 1016.05 kg, a metric tonne 1000 kg: write kg or t (1000 kg)',
  tf: 'a tonne-force is 9.80665 kN, a short ton-force 8.896 kN: write kN',
  oz: 'an ounce can be a mass or a volume: write g or a volume in L',
  gal: 'a US gallon is 3.785 L, an imperial gallon 4.546 L: write L',
};

export interface UnitReading {
  /** SI value of one of this unit, and of zero of it (offset units: degC). */
  readonly factor: number;
  readonly offset: number;
  /** Exponents of the base dimensions, as mathjs orders them. */
  readonly dimensions: readonly number[];
}

const readings = new Map<string, UnitReading>();

/** A unit in mathjs words ("mm^2", "kN*m", "1") as factor and dimensions. Programmer's units only: trusts its input. */
export function unitReading(unit: string): UnitReading {
  const known = readings.get(unit);
  if (known) return known;
  const reading = unit === '1' ? { factor: 1, offset: 0, dimensions: [0, 0, 0, 0, 0, 0, 0, 0, 0] } : measured(unit);
  readings.set(unit, reading);
  return reading;
}

function measured(unit: string): UnitReading {
  // mathjs keeps an offset unit's value as typed: only the conversion to K applies the offset.
  const siValue = (x: number): number => {
    const one = math.unit(x, unit) as Unit & { value: number };
    return /^deg[CF]$/.test(unit) ? Number(one.toNumeric('K')) : one.value;
  };
  const zero = siValue(0);
  const dimensions = (math.unit(1, unit) as Unit & { dimensions: number[] }).dimensions;
  return { factor: siValue(1) - zero, offset: zero, dimensions };
}

export type TypedUnit = { readonly unit: string } | { readonly unknown: string } | { readonly ambiguous: string; readonly meanings: string };

/** Reads a unit as an engineer types it ("kg/m3", "N·m", "lbf/in²") into mathjs words, or says which word is not known. */
export function readUnitText(text: string): TypedUnit {
  const plain = text
    .replace(/[²³⁴]/g, (c) => `^${'²³⁴'.indexOf(c) + 2}`)
    .replace(/[·⋅×]/g, '*')
    .trim();
  const parts = plain.split(/\s*([*/])\s*|\s+/).filter((part) => part !== undefined && part !== '');
  let unit = '';
  for (const part of parts) {
    if (part === '*' || part === '/') {
      unit += part;
      continue;
    }
    const match = /^("|°C|°|[A-Za-zµμ]+)(?:\^?([2-4]))?$/.exec(part);
    if (!match) return { unknown: part };
    const [, word = '', power] = match;
    if (Object.hasOwn(ambiguous, word)) return { ambiguous: word, meanings: ambiguous[word] as string };
    if (!Object.hasOwn(words, word)) return { unknown: word };
    if (unit !== '' && !/[*/]$/.test(unit)) unit += '*';
    unit += words[word] + (power ? `^${power}` : '');
  }
  return { unit };
}

/** True when both units measure the same kind of thing. */
export function sameDimension(a: readonly number[], b: readonly number[]): boolean {
  return a.every((power, i) => Math.abs(power - (b[i] ?? 0)) < 1e-9);
}

/** Every unit word that may be typed, for a message. */
export const unitWords = Object.keys(words);
