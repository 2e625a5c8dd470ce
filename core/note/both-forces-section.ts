import type { Appraisal } from '../appraise.ts';
import { graver, type BothSides, type CheckRow, type Side } from '../checks/check-row.ts';
import { checks } from '../checks/index.ts';
import { bucklingWords } from './buckling-words.ts';
import { placeWords } from '../place-words.ts';
import type { Block, Section } from './note.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { situationWords } from './situation-words.ts';

export const bothForcesTitle = 'Forces by hand and by the whole plate’s solution';

type BothRow = CheckRow & { readonly both: BothSides };

/** Kinds of checks, by how their ids begin, in the order of the note. */
const kinds: readonly (readonly [title: string, begins: string])[] = [
  ['Panels', 'panel-'],
  ['Bolts', 'bolt-'],
  ['Welds', 'weld-'],
  ['Tubes', 'tube-'],
  ['Crossings', 'crossing-'],
  ['Suspension and eyes', 'eye-'],
];

/** Both demands side by side, the mesh and what it is worth, and every demand that is taken at the smaller of two values. */
export function bothForcesSection({ model, rows }: Appraisal, print: Print): Section[] {
  const { solved } = model;
  if (solved === null) return [];
  const both = rows.filter((row): row is BothRow => row.both !== null);
  if ('missing' in solved)
    return [
      {
        title: bothForcesTitle,
        blocks: [
          {
            kind: 'paragraph',
            tone: 'loud',
            text: `The document takes its forces by hand and from the whole plate, and those of the whole plate are missing: ${solved.missing}. ${both.length} demands wait for them.`,
          },
        ],
      },
    ];
  const { size, unknowns, stressError, residual } = solved.mesh;
  const open = Object.entries(solved.situations).filter(([, { settled }]) => !settled);
  const count = Object.values(solved.situations).reduce((sum, { loadings }) => sum + loadings, 0);
  const blocks: Block[] = [
    {
      kind: 'paragraph',
      text: `Beside the formulas of single panels and the grid of tubes the plate was solved as one structure: tubes as beams on their axes, panels as shells, bolts and welds as they are placed, panels in one-sided contact with tubes. The same rules judge both; the larger demand governs unless a reason is given below.`,
    },
    {
      kind: 'list',
      items: [
        `Mesh: cells up to ${print.quantity(size, 'mm', 3)}, ${unknowns} unknowns. Error of the panels’ stresses, by how they jump between cells: ${(100 * stressError).toFixed(1)} %.`,
        `${count} loadings in ${Object.keys(solved.situations).length} load cases; largest rest of the balance of forces and moments ${residual < 1e-9 ? 'under a thousand-millionth' : residual.toExponential(0)} of the load.`,
        open.length === 0
          ? 'Contact settled in every loading: no closed point pulls, no open one overlaps.'
          : `CONTACT DID NOT SETTLE in ${open.map(([id]) => situationWords(model, id)).join('; ')}: these cases are not judged.`,
        bucklingWords(model, solved),
        lossWords(model),
      ],
    },
    ...kinds.flatMap(([title, begins]) => kindTable(title, both.filter(({ id }) => id.startsWith(begins)))), // prettier-ignore
    ...smallerTable(both),
    { kind: 'list', tone: 'caution', items: cautions },
  ];
  return [{ title: bothForcesTitle, startsPage: true, blocks }];

  function kindTable(title: string, of: readonly BothRow[]): Block[] {
    const ids = checks.map(({ id }) => id).filter((id) => of.some((row) => row.id === id));
    if (ids.length === 0) return [];
    const lines = ids.map((id) => {
      const own = of.filter((row) => row.id === id);
      const [worst] = [...own].sort(graver) as [BothRow];
      const bySolver = own.filter((row) => row.both.governs === 'solver').length;
      const { hand, solver, governs } = worst.both;
      return {
        cells: [worst.title, `${placeWords(model, worst.place)}, ${situationWords(model, worst.situation!)}`, demand(hand, worst.unit), demand(solver, worst.unit), use(hand), use(solver), `${governs}; solver at ${bySolver} of ${own.length}`], // prettier-ignore
        loud: worst.verdict !== 'passes',
      };
    });
    return [
      {
        kind: 'table',
        caption: `${title}: gravest place of each check, and by which forces it is judged`,
        columns: [
          { title: 'Check', width: 0.22 },
          { title: 'Place and case', width: 0.22 },
          { title: 'By hand', width: 0.13, align: 'right' },
          { title: 'Whole plate', width: 0.13, align: 'right' },
          { title: 'Use', width: 0.07, align: 'right' },
          { title: 'Use', width: 0.07, align: 'right' },
          { title: 'Governs', width: 0.16 },
        ],
        rows: lines.map(({ cells }) => cells),
        loud: lines.flatMap(({ loud }, i) => (loud ? [i] : [])),
      },
    ];
  }

  function smallerTable(all: readonly BothRow[]): Block[] {
    const chosen = all.filter((row) => row.both.smaller !== '');
    if (chosen.length === 0) return [];
    return [
      {
        kind: 'table',
        caption: 'Demands taken at the smaller of two values, with the engineer’s reason',
        columns: [
          { title: 'Check', width: 0.2 },
          { title: 'Place and case', width: 0.22 },
          { title: 'By hand', width: 0.12, align: 'right' },
          { title: 'Whole plate', width: 0.12, align: 'right' },
          { title: 'Taken', width: 0.08 },
          { title: 'Reason', width: 0.26 },
        ],
        rows: chosen.map(({ title, place, situation, unit, both: { hand, solver, governs, smaller } }) => [
          title,
          `${placeWords(model, place)}, ${situationWords(model, situation!)}`,
          demand(hand, unit),
          demand(solver, unit),
          governs,
          smaller,
        ]),
        loud: chosen.map((_, i) => i),
      },
    ];
  }

  function demand({ demand: value, reason }: Side, unit: string): string {
    return value === null ? reason : print.quantity(value, unit, 3);
  }
  function use({ utilisation }: Side): string {
    return utilisation === null ? '–' : utilisation.toFixed(2);
  }
}

const cautions = [
  'Tubes keep the shape of their sections, lines and legs do not stretch: both make the plate stiffer than it is. Walls under panels and at crossings are judged by the checks.',
  'Panels with fitted or slip-resistant bolts bend with the tubes and take load off them; that counts only while the check of slip passes. Bolts with clearance are taken to slip.',
  'Pulls in bolts include prying on rigid walls, without preload. Small deflections, elastic; stress within a washer and twice the thickness of a bolt is not read.',
  'A smaller demand stands on the engineer’s reason alone: whoever signs must agree with it.',
];

function lossWords({ document }: Model): string {
  const legs = 'Each line or leg is lost in turn.';
  return document.forces?.losses
    ? `${legs} So is each row of bolts and each panel, by the load cases made for that; joints of tubes are then at the stiffness stated, not at the ends of its range.`
    : `${legs} With a bolt row or a panel lost, forces are by hand alone, as the document asks.`;
}
