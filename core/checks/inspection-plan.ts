import type { FatigueReport } from './fatigue-report.ts';
import type { Model } from '../model.ts';
import { fromUnit } from '../quantity/format-quantity.ts';
import { corrosionLoss } from '../durability/corrosion-loss.ts';

export interface Inspection {
  readonly id: string;
  readonly what: string;
  /** Places on the plan; empty: all of the kind. */
  readonly places: readonly string[];
  readonly how: string;
  /** Years of service to the first look and between looks; null: each time the plate is up. */
  readonly first: number | null;
  readonly every: number | null;
  readonly why: string;
}

/** Longest wait for any look, years. Common practice, no source. */
const longest = 5;

/**
 * What to look at, where, how and when; from fatigue, corrosion, and age of the rope. Fatigue: a third of the calculated life of the gravest place of each detail, at
 * most five years; wall: when half of the stated loss would be gone at the tabled rate of bare steel. All intervals are
 * common practice, no source, but for those numbers.
 */
export function inspectionPlan({ document, geometry }: Model, { details }: FatigueReport): Inspection[] {
  const life = document.basis.life.si / fromUnit(1, 'year');
  const given = document.durability;
  const bolted = geometry.panels.filter(({ design }) => design.fixing.kind === 'bolted');
  const within = (years: number) => Math.min(years, longest, life);
  const plan: Inspection[] = [];
  for (const detail of details) {
    if (!detail.leads || detail.life === null) continue;
    const every = within(detail.life / 3);
    if (every < within(longest) || detail.verdict !== 'passes')
      plan.push({ id: `crack ${detail.id}`, what: detail.title.replace(/^Fatigue of /, 'Crack at '), places: [detail.place], how: 'clean, look closely, magnetic particles or eddy current', first: every, every, why: `a third of its calculated life of ${detail.life.toPrecision(3)} years` }); // prettier-ignore
  }
  plan.push({ id: 'welds', what: 'All other welds and edges of holes', places: [], how: 'look closely', first: within(longest), every: within(longest), why: 'what no calculation thought of' }); // prettier-ignore
  const stated = document.protection.lossPerFace.tubeOutside.si;
  const tabled = corrosionLoss(Math.min(life, 100), given?.zone);
  if (stated > 0) {
    const first = within((0.5 * stated * life) / tabled);
    plan.push({ id: 'wall', what: 'Thickness of walls and panels', places: [], how: 'ultrasonic gauge, ten places, the same each time', first, every: first, why: 'half of the stated loss would be gone by then, were the steel bare' }); // prettier-ignore
  }
  if (given?.anodes) {
    plan.push({ id: 'anodes', what: 'Potential of the steel, and what is left of the anodes', places: [], how: 'reference cell at each panel; calliper on the anodes', first: within(1), every: within(longest), why: 'protection that does not work shows in the first year' }); // prettier-ignore
    plan.push({ id: 'path', what: 'Metal path to each bonded panel and its bolts', places: [], how: 'resistance, at most 0.1 ohm', first: null, every: null, why: 'what is not joined is not protected' }); // prettier-ignore
  }
  if (bolted.length > 0) {
    plan.push({ id: 'bolts', what: 'Tightness of bolts, one in ten and every corner, of each bolted panel', places: bolted.map(({ id }) => id), how: 'torque wrench, marks across nut and panel', first: null, every: null, why: 'load that turns round loosens what only friction holds' }); // prettier-ignore
    plan.push({ id: 'crevice', what: 'Crevice under a bolted panel, another one each time', places: [], how: 'take one panel off, look at both faces', first: within(longest), every: within(longest), why: 'no paint and no anode reaches into it' }); // prettier-ignore
  }
  const tubes = [...geometry.mainTubes, ...geometry.crossTubes];
  const sealed = tubes.filter(({ flooded }) => !flooded).map(({ id }) => id);
  if (sealed.length > 0)
    plan.push({ id: 'sealed', what: 'Sealed tubes: tightness', places: sealed, how: 'weigh in water against the first time; vent before cutting, welding or drilling', first: null, every: null, why: 'a leak floods them unseen, and may hold pressure or hydrogen' }); // prettier-ignore
  if (sealed.length < tubes.length)
    plan.push({ id: 'vents', what: 'Vents and drains of flooded tubes and closed bays', places: [], how: 'clear of growth before each lift', first: null, every: null, why: 'water that cannot run out is lifted' }); // prettier-ignore
  plan.push({ id: 'eyes', what: 'Eyes, shackles and lines', places: document.grid.suspension.attachments.map(({ id }) => id), how: 'wear of pin and hole, chafe, certificate', first: null, every: within(1), why: 'a single load path' }); // prettier-ignore
  const { recovery } = document;
  if (recovery) {
    const down = recovery.deployment.si / fromUnit(1, 'year');
    plan.push({ id: 'rope', what: 'Rope of recovery and its splices', places: [], how: 'draw it out whole: chafe, stiffness, length; break a piece', first: null, every: Math.min(down, longest), why: `its strength is counted with the age of one deployment, ${down.toPrecision(2)} years: then renew it, or break a piece and count what is left` }); // prettier-ignore
    if (recovery.releases.length > 0)
      plan.push({ id: 'releases', what: `Releases ${recovery.releases.map((release) => release.id).join(', ')}, floats and canisters`, places: [], how: 'let go under full and near-zero pull, weigh the float in water, new battery, transponder heard before sailing', first: null, every: (recovery.inspection?.si ?? recovery.deployment.si) / fromUnit(1, 'year'), why: 'a release that is never asked is not known to answer' }); // prettier-ignore
  }
  return plan;
}
