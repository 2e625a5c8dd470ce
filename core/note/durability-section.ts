import type { AnodeBurden } from '../durability/anode-burden.ts';
import type { CheckRow } from '../checks/check-row.ts';
import { durabilityReport, type AnodeNeed, type DurabilityReport } from '../checks/durability-report.ts';
import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { inspectionFigure } from './inspection-figure.ts';
import { listedNames } from './listed-names.ts';
import type { Block, Section } from './note.ts';

export const durabilityCautions = [
  'Rates, current densities and breakdown are averages of other steels in other waters: measure this one.',
  'A sealed tube that was down may hold pressure, water or hydrogen: vent it before cutting, drilling, welding or heating; never galvanise it unvented.',
  'A corroded space is short of oxygen: nobody goes in or puts a head in before it is proved safe.',
  'Divers, lifts and hot work are for certified people under the local rules.',
] as const;

/** Corrosion, protection, what was built, and the plan of what to look at. */
export function durabilitySection(model: Model, rows: readonly CheckRow[], print: Print): Section {
  const report = durabilityReport(model, rows);
  const { loss, life } = report;
  const years = significant(life, 3);
  const places = inspectionFigure(model, report.plan);
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      text: `Life ${years} years. Bare steel would lose ${print.quantity(loss.tabled, 'mm', 2)} a face in it (zone “${model.document.durability?.zone ?? 'immersed'}”, EN 1993-5, from memory; by zone: ${loss.byZone.map((one) => `${one.zone} ${print.quantity(one.loss, 'mm', 2)}`).join(', ')}); the checks take ${print.quantity(loss.panel, 'mm', 2)} off panels and ${print.quantity(loss.tubeOutside, 'mm', 2)} off tubes outside (${model.document.protection.lossPerFace.source}).`,
    },
    ...protection(model, report, print),
    ...pairs(report),
    ...built(model, print),
    {
      kind: 'table',
      caption: 'What to look at. Intervals are common practice, no source, but for the lives and rates named',
      columns: [
        { title: '', width: 0.05, align: 'right' },
        { title: 'What', width: 0.22 },
        { title: 'Where', width: 0.14 },
        { title: 'How', width: 0.21 },
        { title: 'First', width: 0.09, align: 'right' },
        { title: 'Then every', width: 0.09, align: 'right' },
        { title: 'Why', width: 0.2 },
      ],
      rows: report.plan.map(({ what, places, how, first, every, why }, i) => [
        `${i + 1}`,
        what,
        places.length === 0 ? 'all' : listedNames(places.map((place) => placeWords(model, place))),
        how,
        when(first),
        when(every),
        why,
      ]),
    },
    ...(places ? [places] : []),
    { kind: 'list', tone: 'caution', items: durabilityCautions },
  ];
  return { title: 'Corrosion and life', blocks };
}

const when = (years: number | null): string => (years === null ? 'each lift' : `${significant(years, 2)} a`);

function protection(model: Model, { area, anodes, burden }: DurabilityReport, print: Print): Block[] {
  const given = model.document.durability;
  if (!given || !area)
    return [
      { kind: 'paragraph', text: 'The document does not describe coating, anodes and what is joined to them: protection is not judged.' },
    ]; // prettier-ignore
  return [
    {
      kind: 'table',
      caption: 'Metal that draws current from the anodes',
      columns: [
        { title: 'Part', width: 0.5 },
        { title: 'Area', width: 0.25, align: 'right' },
        { title: 'Surface', width: 0.25 },
      ],
      rows: area.parts.map(({ name, area: own, bare }) => [name, print.quantity(own, 'm^2'), bare ? 'bare' : `coated, category ${given.coating}`]), // prettier-ignore
    },
    ...(area.isolated.length > 0
      ? [{ kind: 'paragraph', text: `Isolated, so without protection: ${area.isolated.join(', ')}. Each needs its own plan against corrosion.` } as const] // prettier-ignore
      : []),
    ...(anodes ? [need(anodes, print)] : []),
    ...(burden ? [burdenWords(burden, print)] : []),
  ];
}

function need({ mass, byMass, byFirstCurrent, byLastCurrent, count, given }: AnodeNeed, print: Print): Block {
  const short = given < count;
  return {
    kind: 'paragraph',
    tone: short ? 'loud' : 'plain',
    text: `The life uses up ${print.quantity(mass, 'kg')} of alloy. Anodes wanted: ${significant(byMass, 3)} by mass, ${significant(byFirstCurrent, 3)} by the first current, ${significant(byLastCurrent, 3)} by the last: ${count}. Given: ${given}${short ? ', too few' : ''}.`,
  };
}

function burdenWords({ mass, weightInWater, dragArea, drag }: AnodeBurden, print: Print): Block {
  return {
    kind: 'paragraph',
    text: `Their alloy is ${print.quantity(mass, 'kg')}, ${print.quantity(weightInWater, 'N')} in water. In heave they have a drag area (coefficient times area) of ${print.quantity(dragArea, 'm^2')} as square bars (coefficient 2, DNV-RP-C205, from memory)${drag === null ? '' : `: ${print.quantity(drag, 'N')} at the greatest speed of the stated motion`}. It is not counted in the plate’s own drag.`,
  };
}

function pairs({ pairs: found }: DurabilityReport): Block[] {
  if (found.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: 'Unlike metals that touch',
      columns: [
        { title: 'Where', width: 0.14 },
        { title: 'Is eaten', width: 0.18 },
        { title: 'By', width: 0.18 },
        { title: 'Apart', width: 0.09, align: 'right' },
        { title: 'Area ratio', width: 0.09, align: 'right' },
        { title: 'What it means', width: 0.32 },
      ],
      rows: found.map(({ where, anode, cathode, difference, areaRatio, words }) => [
        where,
        anode,
        cathode,
        `${significant(difference, 2)} V`,
        significant(areaRatio, 2),
        words,
      ]),
      loud: found.flatMap(({ verdict }, i) => (verdict === 'severe' ? [i] : [])),
    },
  ];
}

/** Record of what was built. */
function built({ document, mass }: Model, print: Print): Block[] {
  const record = document.durability?.asBuilt;
  if (!record) return [];
  const { weighed, certificates, torques, continuity } = record;
  const rows = [
    ...(weighed ? [['Weighed', '', `${print.quantity(mass.total, 'kg')}, all loads and lifts taken with it`, weighed.source]] : []), // prettier-ignore
    ...certificates.map(({ part, proofLoad, workingLoad, certificate, date }) => ['Proof load', part, `${proofLoad.typed}, to work at ${workingLoad.typed}`, `${certificate}, ${date}`]), // prettier-ignore
    ...torques.map(({ panel, torque, bolts, tool }) => ['Torque', `panel ${panel}`, `${torque.typed}, ${bolts} bolts`, tool]), // prettier-ignore
    ...continuity.map(({ from, to, resistance }) => ['Metal path', `${from} to ${to}`, resistance.typed, 'measured']),
  ];
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: 'As built',
      columns: [
        { title: 'Record', width: 0.14 },
        { title: 'Part', width: 0.26 },
        { title: 'Value', width: 0.34 },
        { title: 'By', width: 0.26 },
      ],
      rows,
    },
  ];
}
