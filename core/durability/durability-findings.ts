import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { fromUnit, printedUnit, quantityText } from '../quantity/format-quantity.ts';
import { asBuiltFindings } from './as-built.ts';
import { corrosionLoss } from './corrosion-loss.ts';
import { galvanisingFindings } from './galvanising-findings.ts';
import { galvanicPairs } from './galvanic-pairs.ts';

/** What of the document's durability does not fit. */
export function durabilityFindings(model: Model): Finding[] {
  const { document } = model;
  const { durability, protection, mass, basis } = document;
  const findings: Finding[] = [];
  const life = basis.life.si / fromUnit(1, 'year');
  const text = (si: number, unit: string) => quantityText(si, printedUnit(unit, document.units), 2);
  if (!protection.cathodic && durability?.coating === 'none' && life <= 100) {
    const tabled = corrosionLoss(life, durability.zone);
    const least = Math.min(protection.lossPerFace.panel.si, protection.lossPerFace.tubeOutside.si);
    if (least < tabled)
      findings.push({
        id: 'corrosion-loss-low',
        place: 'protection',
        text: `Bare steel without protection loses ${text(tabled, 'mm')} a face in ${life.toPrecision(3)} years ${durability.zone && durability.zone !== 'immersed' ? `in the zone “${durability.zone}” ` : ''}(EN 1993-5, Tables 4-1 and 4-2, from memory); ${text(least, 'mm')} is stated.`,
        mend: 'State a larger loss, or coat and protect the steel.',
      });
  }
  if (protection.cathodic && durability && !durability.anodes)
    findings.push({
      id: 'anodes-missing',
      place: 'protection',
      text: 'The plate is to be protected, and no anodes are described: nothing says that they suffice.',
      mend: 'Describe the anodes, or have the protection designed by others and name their document.',
    });
  if (durability?.anodes && !mass.extras.some(({ name }) => /anode/i.test(name)))
    findings.push({
      id: 'anodes-weigh-nothing',
      place: 'mass',
      text: `${durability.anodes.count} anodes of ${durability.anodes.mass.typed} are described, and none is among what the plate carries.`,
      mend: 'Add them to the extras of the mass, with their cores and their centre.',
    });
  if (durability?.anodes && durability.anodes.places.length === 0)
    findings.push({
      id: 'anodes-without-place',
      place: 'protection',
      text: 'The anodes have no places: that the current reaches every part of the plate is not shown.',
      mend: 'Give each anode its place in plan.',
    });
  if (durability)
    for (const { verdict, where, words } of galvanicPairs(model, durability))
      if (verdict === 'severe')
        findings.push({ id: 'galvanic-pair', place: where, text: words, mend: 'Isolate them, choose one metal, or protect both.' }); // prettier-ignore
  return [...findings, ...galvanisingFindings(model), ...asBuiltFindings(model)];
}
