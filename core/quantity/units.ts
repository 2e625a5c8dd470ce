import { create, createUnitDependencies, unitDependencies, type Unit } from 'mathjs';

const math = create({ ...unitDependencies, ...createUnitDependencies }, {});
// mathjs rounds psi at the eleventh digit and kip at the ninth; its pound-force and inch are exact (yard and pound agreement, 1959).
math.createUnit({ psi: { definition: '1 lbf/in^2' }, kip: { definition: '1000 lbf' } }, { override: true });
math.createUnit({ ksi: '1000 psi' });

/** Unit words that may be typed, and the mathjs word for each. Anything else is refused by name. */
// prettier-ignore
const words: Readonly<Record<string, string>> = {
  mm: 'mm', cm: 'cm', m: 'm', km: 'km', um: 'um', 'µm': 'um', 'μm': 'um',
  in: 'in', inch: 'in', inches: 'in', '"': 'in', ft: 'ft', foot: 'ft', feet: 'ft', "'": 'ft',
  g: 'g', kg: 'kg', t: 'tonne', tonne: 'tonne', tonnes: 'tonne', lbm: 'lbm', lb: 'lbm', lbs: 'lbm', L: 'L', litre: 'L', litres: 'L',
  N: 'N', kN: 'kN', MN: 'MN', lbf: 'lbf', kip: 'kip', kips: 'kip', kgf: 'kgf',
  Nm: 'N*m', kNm: 'kN*m', MNm: 'MN*m',
  Pa: 'Pa', kPa: 'kPa', MPa: 'MPa', GPa: 'GPa', bar: 'bar', mbar: 'mbar', psi: 'psi', ksi: 'ksi',
  ms: 'ms', s: 's', sec: 's', min: 'minute', minute: 'minute', minutes: 'minute', h: 'hour', hour: 'hour', hours: 'hour', day: 'day', days: 'day',
  // A year of 365.25 days (the Julian year of the IAU), a month a twelfth of it.
  month: 'month', months: 'month', year: 'year', years: 'year', yr: 'year', yrs: 'year',
  ohm: 'ohm', ohms: 'ohm', '\u03a9': 'ohm', '\u2126': 'ohm', mohm: 'mohm',
  deg: 'deg', '°': 'deg', rad: 'rad', mrad: 'mrad', K: 'K', degC: 'degC', '°C': 'degC', '℃': 'degC', degF: 'degF', '°F': 'degF', '℉': 'degF',
};

/** Words with two meanings in the trade: refused with both. */
const ambiguous: Readonly<Record<string, string>> = {
  ton: 'a short ton is 907.185 kg, a long ton 1016.05 kg, a metric tonne 1000 kg: write kg or t (1000 kg), or kN if a force is meant',
  tons: 'a short ton is 907.185 kg, a long ton 1016.05 kg, a metric tonne 1000 kg: write kg or t (1000 kg), or kN if a force is meant',
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
  const { dimensions, value } = math.unit(1, unit) as Unit & { dimensions: number[]; value: number };
  return {
    ...(Object.hasOwn(offsetUnits, unit)
      ? (offsetUnits[unit] as { factor: number; offset: number })
      : { factor: value, offset: 0 }),
    dimensions,
  };
}

/** mathjs keeps an offset unit's value as typed, so these stand here. Source: NIST SP 811 (2008), B.8: K = °C + 273.15; K = (°F + 459.67)/1.8. */
const offsetUnits: Readonly<Record<string, { readonly factor: number; readonly offset: number }>> = {
  degC: { factor: 1, offset: 273.15 },
  degF: { factor: 1 / 1.8, offset: 459.67 / 1.8 },
};

/** `near`: a known word that differs only in capitals ("Mpa" → MPa). */
export type TypedUnit =
  | { readonly unit: string }
  | { readonly unknown: string; readonly near?: string }
  | { readonly ambiguous: string; readonly meanings: string };

/** Reads a unit as an engineer types it ("kg/m3", "N·m", "lbf/in²") into mathjs words, or says which word is not known. */
export function readUnitText(text: string): TypedUnit {
  const plain = text
    .replace(/[²³⁴]/g, (c) => `^${'²³⁴'.indexOf(c) + 2}`)
    .replace(/[·⋅×]/g, '*')
    .trim();
  const parts = plain.split(/\s*([*/])\s*|\s+/).filter((part) => part !== undefined && part !== '');
  let unit = '';
  for (const part of parts) {
    const mark = part === '*' || part === '/';
    const begins = unit === '' || /[*/]$/.test(unit);
    // A mark needs a word before it.
    if (mark && begins) return { unknown: plain };
    if (mark) {
      unit += part;
      continue;
    }
    const match = /^("|'|°C|°F|°|℃|℉|[A-Za-zµμ\u03a9\u2126]+)(?:\^?([2-4]))?$/.exec(part);
    if (!match) return { unknown: part };
    const [, word = '', power] = match;
    if (Object.hasOwn(ambiguous, word)) return { ambiguous: word, meanings: ambiguous[word] as string };
    if (!Object.hasOwn(words, word)) return { unknown: word, ...nearTo(word) };
    const read = words[word] as string;
    // kNm is two units: a power or a stroke before it would reach only one of them.
    if (read.includes('*') && (power || unit.endsWith('/'))) return { unknown: part };
    unit += (begins ? '' : '*') + read + (power ? `^${power}` : '');
  }
  // A scale with its own zero cannot be multiplied or divided.
  const scaled = /deg[CF]/.test(unit) && !Object.hasOwn(offsetUnits, unit);
  return /[*/]$/.test(unit) || scaled ? { unknown: plain } : { unit };
}

function nearTo(word: string): { readonly near?: string } {
  const near = unitWords.find((known) => known.toLowerCase() === word.toLowerCase());
  return near ? { near } : {};
}

/** True when both units measure the same kind of thing. */
export function sameDimension(a: readonly number[], b: readonly number[]): boolean {
  return a.every((power, i) => Math.abs(power - (b[i] ?? 0)) < 1e-9);
}

/** Every unit word that may be typed, for a message. */
export const unitWords = Object.keys(words);
