import type { Catalogue } from '../catalogue/catalogue.ts';
import type { BoltedFixing } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import { boltPattern } from '../document/bolt-pattern.ts';
import type { Bearing, Bolt, Panel, Side, Tube } from './geometry.ts';
import { boltSteel } from './bolt-steel.ts';
import type { Inspected } from './findings-of.ts';
import { listed } from './listed.ts';

/** Bolts that do not fit on tube or panel, or come too near to an edge, a weld or each other.
 *  Least distances: 1.2 d0 to an edge, 2.2 d0 between holes. Source: EN 1993-1-8:2005, Table 3.3; the end of a tube's
 *  flat is taken as its edge (common practice, no source). */
export function boltFindings(inspected: Inspected): Finding[] {
  const { geometry } = inspected;
  const onTube = crossingsOn(inspected);
  return [
    ...geometry.panels
      .filter((p) => p.design.fixing.kind === 'bolted')
      .flatMap((panel) => onePanel(panel, inspected, onTube)),
    ...neighbours(inspected),
  ];
}

const leastEdge = 1.2;
/** e3 and e4, from the middle line of a slot and from the centre of its round end. */
const leastEdgeOfSlot = 1.5;
const leastPitch = 2.2;
/** A distance that is met exactly is met, in spite of rounding. m */
const touch = 1e-9;

function onePanel(panel: Panel, inspected: Inspected, onTube: CrossingsOn): Finding[] {
  const { tubes, text } = inspected;
  const { id: place, bolts, design } = panel;
  const pattern = boltPattern(design.fixing as BoltedFixing);
  const listedPlaces = pattern.kind === 'listed';
  const stated = listedPlaces ? '' : ` (edge distance ${pattern.edgeDistance.typed})`;
  const findings: Finding[] = [];
  const say = (
    id: string,
    wrong: readonly Bolt[],
    text: (worst: Bolt) => string,
    mend: string,
    by: (bolt: Bolt) => number,
  ): void => {
    if (wrong.length === 0) return;
    const worst = wrong.reduce((a, b) => (by(b) < by(a) ? b : a));
    findings.push({
      id,
      place,
      text: `${wrong.length === 1 ? 'Bolt' : 'Bolts'} ${listed(wrong.map((b) => b.id))}: ${text(worst)}.`,
      mend,
    });
  };

  const { x0, y0, x1, y1 } = panel.outline;
  const fromSide = ({ x, y }: Bolt): Readonly<Record<Side, number>> => ({
    mainLow: y - y0,
    mainHigh: y1 - y,
    crossLow: x - x0,
    crossHigh: x1 - x,
  });
  const isOnSide = (bolt: Bolt, { side, tube, lap }: Bearing): boolean =>
    pattern.kind === 'listed'
      ? bolt.tube === tube || (fromSide(bolt)[side] > -touch && fromSide(bolt)[side] < lap + touch)
      : Math.abs(fromSide(bolt)[side] - pattern.edgeDistance.si) < 1e-6;
  const without = panel.bearings.filter((b) => b.fixed && !bolts.some((bolt) => isOnSide(bolt, b)));
  if (without.length > 0)
    findings.push(
      pattern.kind === 'listed'
        ? {
            id: 'side-without-bolts',
            place,
            text: `No listed bolt of panel ${place} stands on ${without.map((b) => `tube ${b.tube}`).join(', nor on ')}: nothing holds that side.`,
            mend: 'List places there, or let the design rely on the other sides (“support”).',
          }
        : {
            id: 'edge-distance-cannot-be-met',
            place,
            text: `Panel ${place} gets no bolts along ${without.map((b) => b.tube).join(', ')}: the side is shorter than its edge distances of ${pattern.edgeDistance.typed} and notches leave.`,
            mend: 'Take a smaller edge distance or smaller notches.',
          },
    );

  const width = (bolt: Bolt): number => tubes.get(bolt.tube)!.section.width;
  const radius = (bolt: Bolt): number => tubes.get(bolt.tube)!.section.outerRadius;
  const toFace = (bolt: Bolt): number => Math.min(bolt.fromFace, width(bolt) - bolt.fromFace);
  const onFlat = (bolt: Bolt): number => toFace(bolt) - radius(bolt);
  const isOff = (bolt: Bolt): boolean => toFace(bolt) < 0;
  const inRadius = (bolt: Bolt): boolean => !isOff(bolt) && onFlat(bolt) < bolt.hole / 2 - touch;
  const clamped = design.fixing.kind === 'bolted' && design.fixing.into === 'clamp';
  const clears = (bolt: Bolt): number => -toFace(bolt) - bolt.hole / 2;
  say(
    'clamp-on-tube',
    clamped ? bolts.filter((b) => clears(b) < -touch) : [],
    (b) =>
      `the leg of a clamp stands beside its tube; this one lies ${text(Math.abs(toFace(b)))} ${toFace(b) < 0 ? 'beside' : 'on'} tube ${b.tube}${stated}, it needs half its hole, ${text(b.hole / 2)}`,
    listedPlaces
      ? 'Move the place off the tube by half its hole; over a tube between two bays take bolts of another kind.'
      : 'Take an edge distance larger than the overlap by half the hole; over a tube between two bays take bolts of another kind.',
    clears,
  );
  say(
    'bolt-off-tube',
    clamped ? [] : bolts.filter(isOff),
    (b) =>
      listedPlaces
        ? `the place lies ${text(-toFace(b))} beside the nearest tube that may hold it, ${b.tube}`
        : `the bolt line lies ${text(-toFace(b))} beside tube ${b.tube}${stated}`,
    listedPlaces
      ? 'Move the place onto a tube that the panel is fixed to, or take it off the list.'
      : 'Take a larger overlap or a smaller edge distance.',
    toFace,
  );
  say(
    'bolt-in-corner-radius',
    clamped ? [] : bolts.filter(inRadius),
    (b) =>
      `the hole of ${text(b.hole)}, ${text(toFace(b))} from the face of tube ${b.tube}, cuts its corner radius of ${text(radius(b))}`,
    listedPlaces
      ? 'Move the place onto the flat.'
      : 'Move the bolt line onto the flat: a larger overlap or another edge distance.',
    onFlat,
  );
  say(
    'edge-distance-on-tube',
    bolts.filter((b) => !clamped && !isOff(b) && !inRadius(b) && onFlat(b) < leastEdge * b.hole - touch),
    (b) => `${text(onFlat(b))} from the end of the flat of tube ${b.tube}, 1.2 d0 is ${text(leastEdge * b.hole)}`,
    `Move the ${listedPlaces ? 'place' : 'bolt line'} towards the middle of the tube.`,
    onFlat,
  );
  const isOutside = (bolt: Bolt): boolean => listedPlaces && Math.min(bolt.edge1, bolt.edge2) <= 0;
  say(
    'place-outside-panel',
    bolts.filter(isOutside),
    (b) =>
      `the place lies ${text(-Math.min(b.edge1, b.edge2))} outside panel ${place}, of ${text(x1 - x0)} by ${text(y1 - y0)}${panel.design.cornerNotch ? ' with notched corners' : ''}`,
    'Measure it inwards from an edge of the panel, or take it off the list. A design that panels of other sizes share may measure each place from the nearer edge.',
    (b) => Math.min(b.edge1, b.edge2),
  );
  const overlaps = (b: Bolt): boolean => listedPlaces && bolts.length > 1 && boltSteel(b).pitch < b.hole - touch;
  say(
    'bolts-overlap',
    bolts.filter(overlaps),
    (b) =>
      `the holes run into each other: ${text(boltSteel(b).pitch)} from middle to middle, the hole is ${text(b.hole)} wide`,
    'Move one of the places, or take it off the list.',
    (b) => boltSteel(b).pitch,
  );
  const toEdge = (bolt: Bolt): number => Math.min(boltSteel(bolt).edge1, boltSteel(bolt).edge2);
  const needed = (bolt: Bolt): number => (bolt.slot ? leastEdgeOfSlot : leastEdge) * bolt.hole;
  say(
    'edge-distance-too-small',
    bolts.filter((b) => !isOutside(b) && toEdge(b) < needed(b) - touch),
    (b) =>
      `${text(toEdge(b))} from ${b.slot ? 'the centre of the slot’s round end to ' : ''}the panel's edge, ${b.slot ? 1.5 : 1.2} d0 is ${text(needed(b))}`,
    listedPlaces
      ? 'Move the place away from the edge, or take a smaller bolt.'
      : 'Take a larger edge distance, or a smaller bolt.',
    toEdge,
  );
  say(
    'pitch-too-small',
    bolts.filter((b) => b.pitch > 0 && !overlaps(b) && boltSteel(b).pitch < leastPitch * b.hole - touch),
    (b) =>
      `${listedPlaces ? 'nearest bolt' : b.slot ? 'round ends of slots' : 'pitch'} ${text(boltSteel(b).pitch)}${listedPlaces ? ' away' : ''}, 2.2 d0 is ${text(leastPitch * b.hole)}`,
    listedPlaces ? 'Move the places apart, or take a smaller bolt.' : 'Take a larger pitch, or a smaller bolt.',
    (b) => boltSteel(b).pitch,
  );
  const washer = (design.fixing.kind === 'bolted' && washerWidth(design.fixing, inspected.catalogue)) || 0;
  say(
    'slot-not-covered',
    bolts.filter((b) => b.slot !== undefined && b.slot.length > washer + touch),
    (b) => `the slot of ${text(b.slot!.length)} is longer than its washer of ${text(washer)} is wide`,
    'Give a plate washer at least as wide as the slot, 8 mm thick or more, under the head; or take shorter slots.',
    () => 0,
  );
  const weld = weldsAt(panel, inspected, onTube);
  say(
    'bolt-at-crossing-weld',
    bolts.filter((b) => weld(b) < 0),
    (b) => `the hole on tube ${b.tube} meets a weld of a crossing (${text(-weld(b))} too near)`,
    listedPlaces
      ? 'Move the place, or cut corner notches.'
      : 'Move the bolt line, change the pitch, or cut corner notches.',
    weld,
  );
  return findings;
}

const washerWidth = ({ bolt, plateWasher }: BoltedFixing, catalogue: Catalogue): number =>
  plateWasher?.width.si ?? catalogue.bolt(bolt).washerOuter;

/** Crossings along each tube. */
type CrossingsOn = ReadonlyMap<string, readonly { readonly main: Tube; readonly cross: Tube }[]>;

function crossingsOn({ geometry: { crossings }, tubes }: Inspected): CrossingsOn {
  const onTube = new Map<string, { main: Tube; cross: Tube }[]>();
  for (const crossing of crossings) {
    const pair = { main: tubes.get(crossing.main)!, cross: tubes.get(crossing.cross)! };
    for (const { id } of [pair.main, pair.cross]) {
      const others = onTube.get(id);
      if (others) others.push(pair);
      else onTube.set(id, [pair]);
    }
  }
  return onTube;
}

/**
 * Clear distance of a bolt's hole from the weld of the nearest crossing of its tube, m; negative where they meet,
 * infinite where none is near. The fillet's leg is √2 throats. Flush: the welds stand along the main tube's face where a
 * cross tube ends. Stacked: only a through-bolt reaches the far wall, where the other tube is welded on.
 */
function weldsAt(
  { design: { fixing } }: Panel,
  { document, geometry: { arrangement } }: Inspected,
  onTube: CrossingsOn,
): (bolt: Bolt) => number {
  const leg = Math.SQRT2 * document.grid.jointThroat.si;
  const through = fixing.kind === 'bolted' && fixing.into === 'through-bolt with sleeve';
  if (arrangement === 'stacked' && !through) return () => Infinity;
  return ({ x, y, hole, tube }) => {
    let least = Infinity;
    for (const { main, cross } of onTube.get(tube)!) {
      const beside = Math.abs(x - cross.at) - cross.section.width / 2 - leg - hole / 2;
      const across = Math.abs(y - main.at) - main.section.width / 2;
      if (beside >= 0 || across >= leg + hole / 2) continue;
      if (arrangement === 'stacked') least = Math.min(least, Math.max(beside, across - leg - hole / 2));
      else if (endsAt(cross, main.at + Math.sign(y - main.at) * (main.section.width / 2)))
        least = Math.min(least, Math.max(beside, Math.abs(across) - leg - hole / 2));
    }
    return least;
  };
}

const endsAt = (tube: Tube, at: number): boolean =>
  tube.pieces.some(([from, to]) => Math.abs(from - at) < 1e-6 || Math.abs(to - at) < 1e-6);

/** Bolts of different panels on one tube whose holes come too near to each other. */
function neighbours({ geometry: { panels }, tubes, text }: Inspected): Finding[] {
  const onTube = new Map<string, { bolt: Bolt; panel: Panel }[]>();
  for (const panel of panels)
    for (const bolt of panel.bolts) {
      const others = onTube.get(bolt.tube);
      if (others) others.push({ bolt, panel });
      else onTube.set(bolt.tube, [{ bolt, panel }]);
    }
  const pairs = new Map<string, Finding>();
  for (const [id, bolts] of onTube) {
    const { set } = tubes.get(id) as Tube;
    const along = (b: Bolt): number => (set === 'main' ? b.x : b.y);
    bolts.sort((a, b) => along(a.bolt) - along(b.bolt));
    bolts.forEach(({ bolt: a, panel }, i) => {
      const reach = leastPitch * a.hole;
      for (let j = i + 1; j < bolts.length && along(bolts[j]!.bolt) - along(a) < reach; j++) {
        const { bolt: b, panel: other } = bolts[j]!;
        const apart = Math.hypot(a.x - b.x, a.y - b.y);
        if (panel === other || !meet(panel, other) || apart >= leastPitch * Math.max(a.hole, b.hole) - touch) continue;
        const key = `${panel.id}\n${other.id}`;
        if (pairs.has(key)) continue;
        pairs.set(key, {
          id: 'bolts-too-close',
          place: panel.id,
          text: `Bolts ${a.id} and ${b.id} of neighbouring panels stand ${text(apart)} apart on tube ${id}, 2.2 d0 is ${text(leastPitch * Math.max(a.hole, b.hole))}.`,
          mend: 'Set the bolt lines further apart, or stagger the bolts.',
        });
      }
    });
  }
  return [...pairs.values()];
}

/** Bolts in one wall meet; bolts of a topside and an underside panel only where one goes through the whole tube. */
function meet(a: Panel, b: Panel): boolean {
  const through = ({ design: { fixing } }: Panel): boolean =>
    fixing.kind === 'bolted' && fixing.into === 'through-bolt with sleeve';
  return a.design.side === b.design.side || through(a) || through(b);
}
