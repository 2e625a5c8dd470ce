import type { BoltedFixing, WeldedFixing } from '../document/schema.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { offshoreHours } from './cost-of-rates.ts';
import { distortionOf, type Distortion } from './distortion-of.ts';
import type { BoltedAgainstWelded, FixedSo } from './bolted-against-welded.ts';
import { utilisationText } from '../quantity/utilisation-text.ts';

/** A line of the page: what is compared, and what is so of either. */
export interface AgainstRow {
  readonly title: string;
  readonly bolted: string;
  readonly welded: string;
  /** Where the figures come from: a rule, what was computed, or who stated them. */
  readonly source: string;
}

const computed = 'computed: geometry, catalogue and allowances of the document';
const practice = 'common practice, no source';

/** Documents of the checks that govern on either side; their clauses stand with the checks. */
function rulesOf(...rows: readonly FixedSo['strength'][]): string {
  const documents = [...new Set(rows.flatMap((row) => row?.sources ?? []).map(({ document }) => document))];
  return documents.length > 0 ? `${documents.join('; ')}: clauses with the checks` : 'no check is made';
}

/** What shrinkage may bring, each at its worst place. */
function distortionWords(worst: Distortion | null, print: Print): string {
  if (worst === null) return 'No estimate: the coefficients are for steel. Weld in steps, and measure.';
  const { narrower, angle, bow, waves } = worst;
  const degrees = ((180 / Math.PI) * angle).toPrecision(2);
  return `Unclamped, a panel may draw in by ${print.quantity(narrower, 'mm', 2)}, rise ${degrees}° at its edge and ${waves > 0 ? `take waves ${print.quantity(waves, 'mm', 2)} deep` : 'stay clear of waves'}; a tube may bow by ${print.quantity(bow, 'mm', 2)}. Clamp, weld in steps, and measure.`;
}

/** Parts that are loose in the hand at sea, for one bolt; the nut stays on its thread only where it is captive. */
const loose = { 'through-bolt with sleeve': 4, 'one-sided': 2, 'welded stud': 2, 'tapped pad': 2, clamp: 4 } as const;

/** The page's lines, in the order in which people argue. Words that no rule gives are marked as common practice in their source. */
export function againstRows({ bolted, welded, rates }: BoltedAgainstWelded, print: Print): readonly AgainstRow[] {
  const both = (title: string, of: (side: FixedSo) => string, source = computed): AgainstRow => ({
    title,
    bolted: of(bolted),
    welded: of(welded),
    source,
  });
  const stated = rates ? `minutes stated by the user (${rates.source})` : 'no rates are stated';
  const q = (side: FixedSo, id: string, unit: string) => print.quantity(side.appraisal.quantities[id]!.value, unit);
  const gravest = (row: FixedSo['strength']) =>
    row === null
      ? 'no such check is made'
      : `${row.title} at ${row.place}: ${row.verdict}${row.utilisation === null ? (row.reason ? `, ${row.reason}` : '') : `, ${utilisationText(row.utilisation)}`}`;
  const years = (seconds: number | null) => (seconds === null ? 'no number' : print.quantity(seconds, 'year', 3));
  const fixingsOf = (side: FixedSo) => side.appraisal.model.geometry.panels.map(({ design }) => design.fixing);
  const bolts = fixingsOf(bolted).filter((fixing): fixing is BoltedFixing => fixing.kind === 'bolted');
  const welds = fixingsOf(welded).filter((fixing): fixing is WeldedFixing => fixing.kind === 'welded');
  const parts = bolted.appraisal.model.geometry.panels.reduce(
    (sum, { design: { fixing }, bolts: own }) => sum + (fixing.kind === 'bolted' ? own.length * loose[fixing.into] : 0),
    0,
  );
  const lifting = (side: FixedSo) =>
    side.appraisal.model.geometry.panels.reduce(
      (sum, { cutouts }) => sum + cutouts.filter(({ purpose }) => purpose === 'lifting').length,
      0,
    );
  const minutes = (each: number | undefined, count: number, name: string) =>
    each === undefined
      ? `rate “${name}” is not given`
      : count === 0
        ? 'none'
        : `${((each * count) / 60).toFixed(1)} h of one person`;
  const offshore = ({ work }: FixedSo): string => {
    const { hours, missing } = offshoreHours(work, rates);
    return hours === null ? `not without: ${missing.join(', ')}` : `${significant(hours, 3)} h`;
  };
  const torque = bolts.find(({ tightening }) => tightening)?.tightening;
  const cathodic = bolted.appraisal.model.document.protection.cathodic;
  return [
    both(
      'Strength of panels and fixings, gravest',
      ({ strength }) => gravest(strength),
      rulesOf(bolted.strength, welded.strength),
    ),
    both(
      'Fatigue of panels and fixings, gravest',
      ({ fatigue }) => gravest(fatigue),
      rulesOf(bolted.fatigue, welded.fatigue),
    ),
    both(
      'Life that this fatigue detail lasts',
      ({ fatigueLife }) => years(fatigueLife),
      'design life over the utilisation of damage',
    ),
    both('Checks that fail', ({ fails }) => fails.join('; ') || 'none'),
    both('Checks that cannot be judged', ({ unjudged }) => unjudged.join('; ') || 'none'),
    both('Mass in air', (side) => q(side, 'mass.air', 'kg')),
    both('Weight in water', (side) => q(side, 'weight.submerged', 'kN')),
    both('Heaviest panel by hand', (side) => q(side, 'cost.heaviestPanel', 'kg')),
    both('Lifting holes in the panels', (side) => (lifting(side) > 0 ? String(lifting(side)) : 'none drawn')),
    both('Bolts', ({ work }) => String(work.bolts)),
    both('Holes drilled, panel and tube', ({ work }) => String(work.holes)),
    both('Weld length', ({ work }) => print.quantity(work.weld, 'm')),
    {
      title: 'Time to fit on deck',
      source: stated,
      bolted: minutes(rates?.minutesToFitBolt, bolted.work.bolts, 'minutesToFitBolt'),
      welded: minutes(rates?.minutesToWeldMetre, welded.work.weld, 'minutesToWeldMetre'),
    },
    {
      title: 'Time to remove on deck',
      source: stated,
      bolted: minutes(rates?.minutesToRemoveBolt, bolted.work.bolts, 'minutesToRemoveBolt'),
      welded: minutes(rates?.minutesToCutMetre, welded.work.weld, 'minutesToCutMetre'),
    },
    both('Hours offshore over the life, taking off and putting back', offshore, stated),
    {
      title: 'Loose parts at sea',
      source: 'counted: bolt, nut and washers of each bolt',
      bolted: `${parts} (bolts, nuts, washers). Captive nuts or studs lessen them; count them out and in.`,
      welded: 'none',
    },
    {
      title: 'Anti-seize and torque',
      source: torque ? 'stated by the user' : 'T = k d F',
      bolted: torque
        ? `${torque.torque.typed}, k from ${torque.k.low} to ${torque.k.high} (${torque.k.source}). Anti-seize lowers k: the same torque then gives more preload.`
        : 'No tightening is stated. Anti-seize lowers k in T = k d F: the same torque then gives more preload, so state k for the lubricant used.',
      welded: 'none',
    },
    {
      title: 'Corrosion and crevice',
      source: practice,
      bolted: `Crevice all round under the lap and at each hole; drilled tubes let water in and need coating again.${cathodic ? '' : ' No cathodic protection is stated.'}`,
      welded: `${welds.every(({ pattern }) => pattern === 'all round') ? 'Welded all round, the lap is closed; ' : 'Not welded all round: the lap is an open crevice; '}coating is burnt beside the weld and inside the tube.`,
    },
    {
      title: 'Inspection',
      source: practice,
      bolted: 'By eye and wrench; loosening shows. Holes under washers are hidden.',
      welded: 'Toes by eye or dye; a crack from the root is hidden until it is through.',
    },
    {
      title: 'Distortion',
      source:
        'shrinkage of fillets: O. W. Blodgett, Design of Welded Structures, 7.7, from memory; waves: buckling of plates. Within a factor of two',
      bolted: 'none from heat',
      welded: distortionWords(distortionOf(welded.appraisal.model), print),
    },
    {
      title: 'Reuse',
      source: practice,
      bolted: 'Panel can come off and go on again; preloaded bolts are not used twice.',
      welded: 'Panel is cut off; the tube’s face has to be ground and looked at for cracks.',
    },
    {
      title: 'Risk',
      source: practice,
      bolted:
        'Loosening under reversing load; a lost row of bolts is among the cases. Preload holds only as long as it is there.',
      welded:
        'Hot work near coatings and closed spaces: a permit, and vent sealed tubes before heat. Cracks may run into the tube.',
    },
    both(
      'Cost by the rates given',
      ({ cost }) =>
        cost.total === null
          ? `not without rates for: ${cost.missing.join(', ')}`
          : `${cost.total.toFixed(0)} ${rates?.currency ?? ''}`,
      rates ? `rates stated by the user (${rates.source})` : 'no rates are stated',
    ),
  ];
}

/** What would turn the decision round, in sentences. */
export const turnWords = ({ turns, rates }: BoltedAgainstWelded, print: Print): readonly string[] =>
  turns.map(({ what, unit, now, turnsAt }) =>
    unit === 's'
      ? `A design life of ${print.quantity(turnsAt, 'year', 3)} is the ${what}; the life asked for is ${print.quantity(now, 'year', 3)}.`
      : `Costs are equal at ${what} = ${turnsAt.toPrecision(4)} (${rates?.currency ?? ''} or minutes, as the rate is); it is ${now}.`,
  );
