import type { DesignBasis } from '../catalogue/design-basis.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import type { Geometry } from '../geometry/geometry.ts';
import type { MassReport } from '../mass/mass-report.ts';
import { once } from '../once.ts';
import { printedUnit, quantityText } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import type { CaseContext, HeldBy } from './case-context.ts';
import { crossingCase } from './crossing-case.ts';
import { liftOutCase } from './lift-out-case.ts';
import { plateLoads } from './plate-loads.ts';
import type { FieldShare } from './plan-shares.ts';
import { pressureShape } from './pressure-shape.ts';
import { serviceCases, serviceSwing } from './service-cases.ts';
import { serviceForce } from './service-force.ts';
import type { LoadReport } from './situation.ts';
import { flowOf, waterShares } from './water-shares.ts';
import { supportSets, type SupportSet } from './support-set.ts';
import { Supports } from './supports.ts';
import { deckCase, liftInAirCase } from './weight-cases.ts';

/** Middle over mean of the pressure when the document states none: an assumption until the water is computed, no source. */
export const assumedMiddleOverMean = 1.5;

/**
 * What loads the plate in each case and direction, what balances it, and what panels, tubes and attachments get. SI.
 * The water's force is shared by plan area and by a stated pressure shape; each panel is judged with the worse share,
 * and the tubes are solved with each share by itself, so that every solved load is in equilibrium. What needs that solution is solved
 * when it is first asked for, case by case: a search asks for little of it.
 * Refuses attachments beside the tubes, a bridle without apex, a pressure shape that pulls at the rim, and a grid that
 * falls apart.
 */
export function loadReport(
  document: PlateDocument,
  basis: DesignBasis,
  geometry: Geometry,
  mass: MassReport,
): LoadReport {
  const service = serviceForce(document, basis);
  const stated = document.loads.pressureShape;
  const middleOverMean = stated?.middleOverMean ?? assumedMiddleOverMean;
  const sets = supportSets(document, geometry);
  const all = [sets.suspension, sets.padEyes, sets.deck].filter((set): set is SupportSet => set !== null);
  const about = document.loads.panelShares === 'area, shape and flow' ? flowOf(geometry, document) : null;
  const plate = plateLoads(geometry, mass, pressureShape(middleOverMean, geometry.extents), all.flatMap(({ items }) => items.map(({ place }) => place)), about?.over); // prettier-ignore

  let next = 0;
  const heldBy = all.map((set): HeldBy => {
    const supports = set.items.map(({ id }) => ({ id, point: plate.points[next++]! }));
    return { set, supports: new Supports(supports, plate.frame, plate.spread) };
  });
  const held = (name: SupportSet['name']): HeldBy | null => heldBy.find(({ set }) => set.name === name) ?? null;
  const suspension = held('suspension')!;
  const flow = about && waterShares(about, [...plate.shares.fields, ...plate.shares.doubled]);
  const context: CaseContext = {
    flow,
    phases: about?.phases ?? [],
    phaseBounds: about?.bounds ?? [],
    document,
    basis,
    geometry,
    mass,
    plate,
    suspension,
    lifting: held('pad eyes') ?? suspension,
    deck: held('deck'),
    factor: (name) => {
      const factor = basis.factors[name];
      if (!factor)
        throw refusal({
          what: `The design basis ${basis.name} has no factor ${name}`,
          where: { path: 'basis' },
          mend: 'Take a basis that has it.',
        });
      return factor.value;
    },
    forceText: (newtons) => quantityText(newtons, printedUnit('kN', document.units)),
    lengthText: (metres) => quantityText(metres, printedUnit('mm', document.units)),
  };
  const cases = [
    serviceCases(context, service),
    crossingCase(context),
    liftOutCase(context),
    liftInAirCase(context),
    deckCase(context),
  ];
  const share = ({ bay, part, area }: FieldShare) => ({
    area: part.area,
    shape: part.shape,
    solid: area,
    flow: flow?.get(bay) ?? null,
  });
  const swing = once(() => serviceSwing(context, service));
  const findings = once(() => [
    ...service.findings,
    ...doubledBays(plate.shares.doubled),
    ...leaningLegs(all),
    ...cases.flatMap(({ findings: of }) => of()),
  ]);
  return {
    situations: cases.flatMap(({ situations }) => situations),
    get swing() {
      return swing();
    },
    plate,
    definition: [
      ...service.definition,
      `The force is shared by plan area, and by a pressure ${middleOverMean} times its mean in the middle of the plate (${stated ? stated.source : 'a stated assumption until the water is computed'}); each panel takes the larger.`,
      ...(flow
        ? [
            `Beside them each panel has its share by the flow about the plate: of inertia by potential flow, of drag the larger of area and edge-weighted area a quarter cycle later, the worst phase of the cycle${document.hydrodynamics?.motion ? '' : ' (no motion is stated: the larger of the two)'}. Panels and their fixings take the largest of all shares; tubes and grid are solved with area and with shape, each of which is the whole force, and with the flow’s own spread over panels and tubes at phases of the cycle that bound the rest (with a panel lost: with all of the force as inertia and all of it as drag, of which what the panel carried goes to the others alike)${about && about.over.length > 1 ? ', each about the clean plate and about the plate with the growth of the stated years' : ''}.`,
          ]
        : []),
      'It acts on the solid plan area: a hole or notch that opens into a bay carries none, one over a tube hands it to the tube. The plates of panels are checked as if the pressure acted on their holes too.',
    ],
    forceHoldsWeight: service.holdsWeight,
    shares: new Map(plate.shares.fields.map((field) => [field.bay, share(field)])),
    tubeShare: { area: plate.shares.tubePart.area, shape: plate.shares.tubePart.shape },
    get findings() {
      return findings();
    },
  };
}

function doubledBays(doubled: readonly { readonly bay: string }[]): Finding[] {
  return doubled.map(({ bay }) => ({
    id: 'bay-covered-twice',
    place: bay,
    text: `Bay ${bay} has a panel on either side: each is judged with all of the bay’s pressure, the tubes get it once.`,
    mend: 'Nothing, if both are meant; else take one away.',
  }));
}

/** A leg's pull in plan across a tube bends it in plan, which no beam here does, unless a crossing takes it up. */
function leaningLegs(sets: readonly SupportSet[]): Finding[] {
  return sets.flatMap(({ name, items }) => {
    const between = items
      .filter(({ lean, place }) => place.crossing === null && (lean[0] !== 0 || lean[1] !== 0))
      .map(({ id }) => id);
    if (between.length === 0) return [];
    return [
      {
        id: 'leg-between-crossings',
        place: name,
        text: `The legs at ${between.join(', ')} lean and stand between crossings: their pull across the tube is taken by the nearest tube that crosses it, and the bending in plan between them is not judged.`,
        mend: 'Put the attachments at crossings.',
      },
    ];
  });
}
