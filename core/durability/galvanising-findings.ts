import type { Finding } from '../finding.ts';
import type { Rectangle } from '../geometry/geometry.ts';
import { listed } from '../geometry/listed.ts';
import type { Model } from '../model.ts';
import { printedUnit, quantityText } from '../quantity/format-quantity.ts';
import { galvanisingHole, lapWithoutVent } from './galvanising-vents.ts';

/** What of a plate that is dipped in molten zinc is dangerous or does not come out well. None where it is not to be galvanised. */
export function galvanisingFindings({ document, geometry }: Model): Finding[] {
  if (!document.protection.galvanised) return [];
  const text = (si: number, unit: string) => quantityText(si, printedUnit(unit, document.units), 3);
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const findings: Finding[] = [];
  const sealed = tubes.filter(({ flooded }) => !flooded);
  if (sealed.length > 0)
    findings.push({
      id: 'galvanised-sealed',
      place: sealed[0]!.id,
      text: `The plate is to be galvanised with sealed tubes (${listed(sealed.map(({ id }) => id))}): a closed void bursts in the bath, and kills.`,
      mend: 'Vent and drain every tube, and close the holes afterwards if it is to be sealed; or do not galvanise.',
    });
  const bySize = new Map<string, (typeof tubes)[number][]>();
  for (const tube of tubes.filter(({ flooded }) => flooded)) {
    const key = [tube.section.id, tube.vent, tube.drain].join();
    bySize.set(key, [...(bySize.get(key) ?? []), tube]);
  }
  for (const alike of bySize.values()) {
    const { section, vent, drain, id } = alike[0]!;
    const least = galvanisingHole(Math.max(section.width, section.height));
    const smallest = Math.min(vent ?? 0, drain ?? 0);
    if (least !== null && smallest >= least * (1 - 1e-9)) continue;
    findings.push({
      id: 'galvanising-holes',
      place: id,
      text: `Tubes ${listed(alike.map((tube) => tube.id))} are to be galvanised, with holes of ${smallest > 0 ? text(smallest, 'mm') : 'no size'}; ${least === null ? 'the table of EN ISO 14713-2 ends at 200 mm (from memory)' : `one at each end must be at least ${text(least, 'mm')} (EN ISO 14713-2, from memory)`}.`,
      mend: 'Enlarge vent and drain at opposite ends, each at the corner that is highest or lowest in the bath, and ask the galvaniser.',
    });
  }
  const lapped = geometry.panels.flatMap((panel) => {
    if (panel.design.fixing.kind !== 'welded') return [];
    const over = geometry.bays.filter(({ id }) => panel.bays.includes(id)).reduce((sum, { opening }) => sum + shared(panel.outline, opening), 0); // prettier-ignore
    const lap = shared(panel.outline, panel.outline) - over;
    return lap > lapWithoutVent ? [{ id: panel.id, lap }] : [];
  });
  if (lapped.length > 0)
    findings.push({
      id: 'galvanised-lap',
      place: lapped[0]!.id,
      text: `Panels ${listed(lapped.map(({ id }) => id))} are welded on and galvanised with their tubes: up to ${text(Math.max(...lapped.map(({ lap }) => lap)), 'cm^2')} lie face on face, more than ${text(lapWithoutVent, 'cm^2')} (ASTM A385, from memory). Acid creeps in and weeps out for years; where welds close the lap, steam bursts it in the bath.`,
      mend: 'Galvanise grid and panels apart and bolt them, or weld after galvanising and coat the welds; closed laps need a vent hole.',
    });
  if (!document.protection.coating)
    findings.push({
      id: 'galvanised-weighs-nothing',
      place: 'mass',
      text: 'The plate is to be galvanised, and no coating is stated: its zinc is missing from the mass.',
      mend: 'State the coating’s thickness and density (zinc: 7140 kg/m³).',
    });
  return findings;
}

const shared = (a: Rectangle, b: Rectangle): number =>
  Math.max(0, Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)) * Math.max(0, Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0));
