import { weighedName } from '../mass/as-weighed.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import type { PlateDocument } from '../document/schema.ts';
import { quantityText, printedUnit } from '../quantity/format-quantity.ts';

/** The document with the record of what was built, if it was this option that was built; without it otherwise. */
export function builtAs(document: PlateDocument, option: string | null): PlateDocument {
  const { durability } = document;
  if (!durability?.asBuilt || durability.asBuilt.option === option) return document;
  const { asBuilt: _of, ...rest } = durability;
  return { ...document, durability: rest };
}

/** Ω. Source: DNV-RP-B401, paths to a protected part, from memory. */
export const mostContinuity = 0.1;

/** What was found when the plate was built and does not fit. */
export function asBuiltFindings({ document, geometry, mass }: Model): Finding[] {
  const built = document.durability?.asBuilt;
  if (!built) return [];
  const text = (si: number, unit: string) => quantityText(si, printedUnit(unit, document.units));
  const findings: Finding[] = [];
  const added = mass.parts.find(({ name }) => name === weighedName);
  if (added && Math.abs(added.mass) > 0.05 * (mass.total - added.mass))
    findings.push({
      id: 'weighed-mass',
      place: 'as built',
      text: `The plate weighs ${text(mass.total, 'kg')} on the scales and ${text(mass.total - added.mass, 'kg')} by its parts: more than 5 % apart.`,
      mend: 'Find what differs: it is not where the plate is thought to be, nor as strong.',
    });
  for (const { from, to, resistance } of built.continuity)
    if (resistance.si > mostContinuity)
      findings.push({
        id: 'continuity',
        place: to,
        text: `From ${from} to ${to} ${resistance.typed} were measured: over ${mostContinuity} ohm the part is not protected (DNV-RP-B401, from memory).`,
        mend: 'Clean the joint or lay a strap, measure again; or call the part isolated.',
      });
  for (const { part, proofLoad, workingLoad, certificate } of built.certificates)
    if (proofLoad.si < workingLoad.si)
      findings.push({
        id: 'proof-load',
        place: part,
        text: `${part} was proved with ${proofLoad.typed} (${certificate}) and is to work at ${workingLoad.typed}.`,
        mend: 'Prove it with more than its working load, as the rule it is certified by asks.',
      });
  const panels = new Set(geometry.panels.map(({ id }) => id));
  for (const { panel } of built.torques)
    if (!panels.has(panel))
      findings.push({
        id: 'torque-log',
        place: panel,
        text: `The torque log names panel ${panel}, which this plate has not.`,
        mend: `Name one of ${[...panels].join(', ')}.`,
      });
  return findings;
}
