import type { SourceOfRow, Substance } from './rows.ts';

const typical = (clause: string): SourceOfRow => ({ document: 'common practice, no source', clause, memory: true });

/** What only adds weight: dry coating and anode metal. kg/m³. */
export const substances: readonly Substance[] = [
  {
    id: 'epoxy coating, dry',
    title: 'Epoxy coating, dry film',
    density: 1500,
    source: typical('1300 to 1600 kg/m³ by filler'),
  },
  {
    id: 'polyester coating, dry',
    title: 'Glass flake polyester coating, dry film',
    density: 1350,
    source: typical('1250 to 1450 kg/m³ by filler'),
  },
  { id: 'zinc', title: 'Zinc: galvanising and anodes', density: 7140, source: typical('handbook density of zinc') },
  {
    id: 'aluminium anode',
    title: 'Aluminium-zinc-indium anode alloy',
    density: 2750,
    source: typical('2700 to 2800 kg/m³'),
  },
];
