import { describe, expect, it } from 'vitest';
import { kinds, type Kind } from '../../core/quantity/kinds.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { unitWords } from '../../core/quantity/units.ts';
import { Refusal } from '../../core/refusal.ts';

const si = (typed: string, kind: Kind): number => readQuantity(typed, kind).si;

/** One unit in the last place: mathjs multiplies by a factor that is itself rounded. */
const ulps = (value: number, exact: number): number =>
  Math.abs(value - exact) / (Math.abs(exact) * Number.EPSILON || 1);

function refused(typed: string, kind: Kind): string {
  try {
    readQuantity(typed, kind);
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
  throw new Error(`“${typed}” was accepted`);
}

// Exact by definition: the inch and the pound (international yard and pound agreement, 1959), standard gravity (3rd CGPM, 1901).
const inch = 0.0254;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

describe('lengths as they are typed', () => {
  it.each([
    ['10 mm', 0.01],
    ['10mm', 0.01],
    ['10,5 mm', 0.0105],
    ['.5 mm', 0.0005],
    ['1e-3 m', 0.001],
    ['1.2E3 mm', 1.2],
    ['+5 mm', 0.005],
    ['-5 mm', -0.005],
    ['3/8 in', (3 / 8) * inch],
    ['3/8"', (3 / 8) * inch],
    ['3 / 8 in', (3 / 8) * inch],
    ['1 1/2 in', 1.5 * inch],
    ['1-1/2 in', 1.5 * inch],
    ['-1 1/2 in', -1.5 * inch],
    ['5 ft', 60 * inch],
    ['5 ft 3 in', 63 * inch],
    ['5 ft 3 1/2 in', 63.5 * inch],
    ['5 feet 3 inches', 63 * inch],
    ['5ft3in', 63 * inch],
    [`5'-3"`, 63 * inch],
    [`5' 3 1/2"`, 63.5 * inch],
    ['5′ 3″', 63 * inch],
    ['1½ in', 1.5 * inch],
    ['⅜ in', (3 / 8) * inch],
    ['0 mm', 0],
  ])('%s', (typed, exact) => expect(ulps(si(typed, 'length'), exact)).toBeLessThanOrEqual(2));

  it('the sign of feet and inches stands before both', () =>
    expect(si('-5 ft 3 in', 'length')).toBeCloseTo(-63 * inch, 14));

  it('keeps the text as typed', () => expect(readQuantity('  1½ in ', 'length').typed).toBe('1½ in'));

  it('reads what this program prints: typographic minus, thin blanks between thousands, powers of ten', () => {
    expect(si('−3 mm', 'length')).toBe(si('-3 mm', 'length'));
    expect(si('12\u202f350 N', 'force')).toBe(12350);
    expect(si('1 000 000 N', 'force')).toBe(1e6);
    expect(si('1.200·10⁷ N', 'force')).toBe(1.2e7);
    expect(si('−1.5·10⁻⁵ m', 'length')).toBe(-1.5e-5);
  });

  it('a blank before three digits of a fraction parts no thousands', () =>
    expect(si('1 100/200 in', 'length')).toBeCloseTo(1.5 * inch, 15));
});

describe('units against their definitions', () => {
  // NIST SP 811 (2008), appendix B.8 for the factors (from memory); exact ones from the definitions above.
  const table: Readonly<Record<string, readonly [kind: Kind, text: string, exact: number]>> = {
    mm: ['length', '1 mm', 1e-3],
    cm: ['length', '1 cm', 1e-2],
    m: ['length', '1 m', 1],
    km: ['length', '1 km', 1e3],
    um: ['length', '1 um', 1e-6],
    µm: ['length', '1 µm', 1e-6],
    μm: ['length', '1 μm', 1e-6],
    in: ['length', '1 in', inch],
    inch: ['length', '1 inch', inch],
    inches: ['length', '1 inches', inch],
    '"': ['length', '1"', inch],
    ft: ['length', '1 ft', 12 * inch],
    foot: ['length', '1 foot', 12 * inch],
    feet: ['length', '1 feet', 12 * inch],
    "'": ['length', "1'", 12 * inch],
    g: ['mass', '1 g', 1e-3],
    kg: ['mass', '1 kg', 1],
    t: ['mass', '1 t', 1e3],
    tonne: ['mass', '1 tonne', 1e3],
    tonnes: ['mass', '1 tonnes', 1e3],
    lbm: ['mass', '1 lbm', pound],
    lb: ['mass', '1 lb', pound],
    lbs: ['mass', '1 lbs', pound],
    L: ['volume', '1 L', 1e-3],
    litre: ['volume', '1 litre', 1e-3],
    litres: ['volume', '1 litres', 1e-3],
    N: ['force', '1 N', 1],
    kN: ['force', '1 kN', 1e3],
    MN: ['force', '1 MN', 1e6],
    lbf: ['force', '1 lbf', 4.4482216152605],
    kip: ['force', '1 kip', 4448.2216152605],
    kips: ['force', '1 kips', 4448.2216152605],
    kgf: ['force', '1 kgf', 9.80665],
    Nm: ['moment', '1 Nm', 1],
    kNm: ['moment', '1 kNm', 1e3],
    MNm: ['moment', '1 MNm', 1e6],
    Pa: ['stress', '1 Pa', 1],
    kPa: ['stress', '1 kPa', 1e3],
    MPa: ['stress', '1 MPa', 1e6],
    GPa: ['stress', '1 GPa', 1e9],
    bar: ['stress', '1 bar', 1e5],
    mbar: ['stress', '1 mbar', 1e2],
    psi: ['stress', '1 psi', poundForce / inch ** 2],
    ksi: ['stress', '1 ksi', (1e3 * poundForce) / inch ** 2],
    ms: ['time', '1 ms', 0.001],
    s: ['time', '1 s', 1],
    sec: ['time', '1 sec', 1],
    min: ['time', '1 min', 60],
    minute: ['time', '1 minute', 60],
    minutes: ['time', '1 minutes', 60],
    h: ['time', '1 h', 3600],
    hour: ['time', '1 hour', 3600],
    hours: ['time', '1 hours', 3600],
    day: ['time', '1 day', 86400],
    days: ['time', '1 days', 86400],
    // The Julian year of 365.25 days (IAU); a month is a twelfth of it: common practice, no source.
    month: ['time', '1 month', (365.25 * 86400) / 12],
    months: ['time', '1 months', (365.25 * 86400) / 12],
    year: ['time', '1 year', 365.25 * 86400],
    years: ['time', '1 years', 365.25 * 86400],
    yr: ['time', '1 yr', 365.25 * 86400],
    yrs: ['time', '1 yrs', 365.25 * 86400],
    ohm: ['resistance', '1 ohm', 1],
    ohms: ['resistance', '1 ohms', 1],
    Ω: ['resistance', '1 \u03a9', 1],
    '\u2126': ['resistance', '1 \u2126', 1],
    mohm: ['resistance', '1 mohm', 1e-3],
    deg: ['angle', '1 deg', Math.PI / 180],
    '°': ['angle', '1°', Math.PI / 180],
    rad: ['angle', '1 rad', 1],
    mrad: ['angle', '1 mrad', 1e-3],
    K: ['temperature', '1 K', 1],
    degC: ['temperature', '20 degC', 293.15],
    '°C': ['temperature', '20 °C', 293.15],
    '℃': ['temperature', '20 ℃', 293.15],
    degF: ['temperature', '68 degF', 293.15],
    '°F': ['temperature', '68 °F', 293.15],
    '℉': ['temperature', '68 ℉', 293.15],
  };

  it('every word that may be typed stands in the table, and no other', () =>
    expect(Object.keys(table).sort()).toEqual([...unitWords].sort()));

  it.each(Object.entries(table))('%s', (_, [kind, text, exact]) =>
    expect(ulps(si(text, kind), exact)).toBeLessThanOrEqual(2),
  );

  it('the factors that NIST SP 811 (2008), B.8 prints (from memory), to the printed digits', () => {
    const printed: readonly [string, Kind, string][] = [
      ['1 lbf', 'force', '4.448222e+0'],
      ['1 kip', 'force', '4.448222e+3'],
      ['1 psi', 'stress', '6.894757e+3'],
      ['1 ksi', 'stress', '6.894757e+6'],
      ['1 lb/ft^3', 'density', '1.601846e+1'],
      ['1 lbf/ft', 'lineForce', '1.459390e+1'],
      ['1 lbf/in', 'lineForce', '1.751268e+2'],
      ['1 lbf ft', 'moment', '1.355818e+0'],
      ['1 lbf in', 'moment', '1.129848e-1'],
      ['1 in^3', 'modulus', '1.638706e-5'],
      ['1 in^4', 'inertia', '4.162314e-7'],
      ['1 ft^3', 'volume', '2.831685e-2'],
      ['1 ft^2', 'area', '9.290304e-2'],
      ['1 lb/ft^2', 'areaMass', '4.882428e+0'],
      ['1 psi', 'stress', '6.894757e+3'],
    ];
    for (const [text, kind, digits] of printed) expect(si(text, kind).toExponential(6), text).toBe(digits);
  });

  it.each([
    ['300 lbf', 'force', 300 * poundForce],
    ['40 ksi', 'stress', (40e3 * poundForce) / inch ** 2],
    ['1.2 t', 'mass', 1200],
    ['355 N/mm2', 'stress', 355e6],
    ['355 N/mm²', 'stress', 355e6],
    ['355 N/mm^2', 'stress', 355e6],
    ['2.5 kN m', 'moment', 2500],
    ['2.5 kN·m', 'moment', 2500],
    ['2.5 kN*m', 'moment', 2500],
    ['1025 kg/m3', 'density', 1025],
    ['0.02 m/s²', 'acceleration', 0.02],
    ['10 kg·m/s²', 'force', 10],
  ] as const)('%s', (typed, kind, exact) => expect(ulps(si(typed, kind), exact)).toBeLessThanOrEqual(2));

  it('the example of each kind is a quantity of that kind', () => {
    for (const [kind, { example }] of Object.entries(kinds))
      for (const one of example.split(/, | or /)) expect(Number.isFinite(si(one, kind as Kind)), one).toBe(true);
  });
});

describe('refusals say what, show the text back, and how to mend it', () => {
  it.each([
    ['2 ton', 'mass', /“2 ton” can mean more than one thing.*short ton is 907\.185 kg.*long ton 1016\.05 kg.*1000 kg/],
    ['2 tons', 'force', /short ton.*kN if a force is meant/],
    ['2 tf', 'force', /tonne-force is 9\.80665 kN.*short ton-force 8\.896 kN/],
    ['5 lb', 'force', /lb is read as a mass, the field needs a force.*lbf \(4\.448 N\).*lbm \(0\.4536 kg\)/],
    ['2 lb/ft', 'lineForce', /force is lbf/],
    ['5 gal', 'volume', /US gallon is 3\.785 L, an imperial gallon 4\.546 L/],
    ['5 oz', 'mass', /mass or a volume/],
    ['1,000 mm', 'length', /“1,000 mm” can be read two ways.*Write 1000 for a thousand/],
    ['1.000,5 mm', 'length', /two ways/],
    ['1,000,000 N', 'force', /two ways/],
    ['10', 'length', /“10” has no unit, the field needs a length\. Write a length with its unit: 10 mm or 3\/8 in/],
    ['10 kg', 'length', /“10 kg” is a mass, the field needs a length/],
    ['10 N', 'mass', /is a force, the field needs a mass/],
    ['5 kN/m/s', 'lineForce', /another kind of quantity/],
    ['10 furlong', 'length', /the unit “furlong”, which is not known/],
    ['10 Mpa', 'stress', /“Mpa”, which is not known\. Is MPa meant\?/],
    ['10 MM', 'length', /Is mm meant\?/],
    ['10 constructor', 'length', /“constructor”, which is not known/],
    ['10 __proto__', 'length', /“__proto__”, which is not known/],
    ['10 mm^5', 'length', /“mm\^5”/],
    ['1e400 mm', 'length', /“1e400 mm” is not a finite number/],
    ['1e308 km', 'length', /not a finite number/],
    ['1e-400 mm', 'length', /too near to zero/],
    ['1e-323 um', 'length', /too near to zero/],
    ['NaN mm', 'length', /does not begin with a number/],
    ['Infinity mm', 'length', /does not begin with a number/],
    ['1/0 in', 'length', /divides by zero/],
    ['1 1/0 in', 'length', /divides by zero/],
    ['1.5 1/2 in', 'length', /./],
    ['1.5/2 in', 'length', /not a number/],
    ['5 ft -3 in', 'length', /./],
    ['1.2.3 mm', 'length', /not a number/],
    ['', 'length', /The text is empty\. Write a length/],
    ['mm', 'length', /does not begin with a number/],
    ['10 mm/', 'length', /“mm\/”, which is not known/],
    ['10 /mm', 'length', /“\/mm”/],
    ['10 * mm', 'length', /“\* mm”/],
    ['10 N//mm', 'lineForce', /not known/],
    ['9 degC m/m', 'temperature', /not known/],
    ['5 N/kNm', 'length', /“kNm”/],
    ['5³ mm', 'length', /./],
    ['0x10 mm', 'length', /“x10”/],
    ['10 mm extra', 'length', /“extra”/],
  ] as const)('“%s” as %s', (typed, kind, says) => expect(refused(typed, kind)).toMatch(says));
});
