import { coatingBreakdown } from '../durability/coating-breakdown.ts';
import { currentDensity } from '../durability/current-density.ts';
import { anodeDensity } from '../durability/anode-density.ts';
import { protectedArea } from '../durability/protected-area.ts';
import type { Durability } from '../document/durability-field.ts';
import type { Model } from '../model.ts';
import { fromUnit } from '../quantity/format-quantity.ts';
import { missing, type Input, type Reading } from './check.ts';

export const anodePlaces = (): readonly string[] => ['anodes'];

/** True, or why no anodes are judged. */
export function anodesApply({ document: { protection, durability } }: Model): true | string {
  if (!protection.cathodic) return 'there is no cathodic protection';
  return durability?.anodes ? true : 'the document describes no anodes';
}

const b401 = (clause: string) => ({ document: 'DNV-RP-B401', edition: '2010', clause, memory: true }) as const;
export const anodeSource = b401;

type Anodes = NonNullable<Durability['anodes']>;
const durabilityOf = ({ document }: Model): Durability => document.durability!;
export const anodesOf = (model: Model): Anodes => durabilityOf(model).anodes!;

const years = ({ document }: Model): number => document.basis.life.si / fromUnit(1, 'year');
const density = (of: 'initial' | 'mean' | 'final', meaning: string): Input => ({
  unit: 'A/m^2',
  meaning,
  from: 'document: water; DNV-RP-B401, from memory',
  read: ({ document: { water } }): Reading =>
    water.temperature
      ? currentDensity(water.depth.si, water.temperature.si)[of]
      : missing(
          'the temperature of the water ("temperature" of the water): the current that steel needs depends on it',
        ),
});
const breakdown = (of: (model: Model) => number, meaning: string): Input => ({
  unit: '1',
  meaning,
  from: 'document: durability; DNV-RP-B401, from memory',
  read: of,
});
const breakdownAt = (model: Model, after: number) =>
  coatingBreakdown(durabilityOf(model).coating, model.document.water.depth.si, after);
const size = (meaning: string, of: (anodes: Anodes) => number): Input => ({
  unit: 'mm',
  meaning,
  from: 'document: durability',
  read: (model) => of(anodesOf(model)),
});

/** What protects and what is protected, by symbol. */
export const anodeInputs = {
  A_c: {
    unit: 'm^2',
    meaning: 'coated metal that is joined to the anodes',
    from: 'geometry; document: durability',
    read: (model: Model) => protectedArea(model, durabilityOf(model)).coated,
  },
  A_b: {
    unit: 'm^2',
    meaning: 'bare metal that is joined to the anodes',
    from: 'geometry; document: durability',
    read: (model: Model) => protectedArea(model, durabilityOf(model)).bare,
  },
  i_i: density('initial', 'current density to polarise bare steel'),
  i_m: density('mean', 'mean current density of bare steel'),
  i_f: density('final', 'current density of bare steel at the end, after a storm'),
  f_ci: breakdown((model) => breakdownAt(model, 0).final, 'part of the coating that counts as bare when new'),
  f_cm: breakdown((model) => breakdownAt(model, years(model)).mean, 'the same in the mean over the life'),
  f_cf: breakdown((model) => breakdownAt(model, years(model)).final, 'the same at the end of life'),
  t_f: {
    unit: 'year',
    meaning: 'life',
    from: 'document: basis',
    read: ({ document }: Model) => document.basis.life.si,
  },
  N: { unit: '1', meaning: 'anodes', from: 'document: durability', read: (model: Model) => anodesOf(model).count },
  m_a: {
    unit: 'kg',
    meaning: 'alloy of one anode',
    from: 'document: durability',
    read: (model: Model) => anodesOf(model).mass.si,
  },
  epsilon: {
    unit: 'A*hour/kg',
    meaning: 'charge that the alloy gives',
    from: 'DNV-RP-B401, from memory',
    read: (model: Model) => fromUnit(anodesOf(model).alloy === 'aluminium' ? 2000 : 780, 'A*hour/kg'),
  },
  u: {
    unit: '1',
    meaning: 'part of the alloy that can be used up',
    from: 'DNV-RP-B401, from memory: 0.90 slender stand-off, 0.85 short stand-off and long flush, 0.80 short flush',
    read: (model: Model) => utilisation(anodesOf(model)),
  },
  rho_w: {
    unit: 'ohm*m',
    meaning: 'resistivity of the water, 0.30 in cool seawater where it is not stated',
    from: 'document: durability',
    read: (model: Model) => durabilityOf(model).resistivity?.si ?? 0.3,
  },
  dE: {
    unit: 'V',
    meaning: 'from the alloy’s potential to that which protects steel, −0.80 V (Ag/AgCl)',
    from: 'DNV-RP-B401, from memory: −1.05 V aluminium, −1.00 V zinc',
    read: (model: Model) => (anodesOf(model).alloy === 'aluminium' ? 0.25 : 0.2),
  },
  rho_a: {
    unit: 'kg/m^3',
    meaning: 'density of the alloy',
    from: 'DNV-RP-B401, from memory',
    read: (model: Model) => anodeDensity[anodesOf(model).alloy],
  },
  flush: {
    unit: '1',
    meaning: 'flush (1) or stand-off (0)',
    from: 'document: durability',
    read: (model: Model) => (anodesOf(model).form === 'flush' ? 1 : 0),
  },
  L: size('length of an anode', ({ length }) => length.si),
  b: size('width of a flush anode’s face', ({ width }) => width?.si ?? 0),
  d_k: size('core of a stand-off anode', ({ core }) => core?.si ?? 0),
  k_d: {
    unit: '1',
    meaning: 'more resistance near the steel: 1.3 from 0.15 m to 0.30 m',
    from: 'DNV-RP-B401, from memory',
    read: (model: Model): Reading => nearSteel(anodesOf(model)),
  },
} satisfies Record<string, Input>;

/** A bar four times as long as it is thick is slender; a flush anode four times as long as wide is long. */
function utilisation({ form, length, width, mass, alloy }: Anodes): number {
  if (form === 'flush') return length.si >= 4 * width!.si ? 0.85 : 0.8;
  const radius = Math.sqrt(mass.si / (anodeDensity[alloy] * Math.PI * length.si));
  return length.si >= 4 * radius ? 0.9 : 0.85;
}

function nearSteel({ form, distance }: Anodes): Reading {
  if (form === 'flush') return 1;
  const off = distance!.si;
  if (off >= 0.3) return 1;
  return off >= 0.15
    ? 1.3
    : missing('a rule for a stand-off anode nearer than 0.15 m to the steel: call it flush, or set it off');
}

export const anodeCautions = [
  'Current densities, breakdown and utilisation are held from memory of DNV-RP-B401: have them confirmed against the edition in force.',
  'What is not joined by metal to the anodes is not protected: prove the path of each panel and bolt when it is fitted.',
  'Protection below −1.10 V (Ag/AgCl) cracks hard bolts, and may blister the coating.',
] as const;
