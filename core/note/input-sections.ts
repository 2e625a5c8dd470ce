import { boltPattern, patternWords } from '../document/bolt-pattern.ts';
import type { BoltedFixing, PanelDesign } from '../document/schema.ts';
import type { Tube } from '../geometry/geometry.ts';
import { lapsOf } from '../geometry/laps-of.ts';
import { symbolBox } from '../derive/symbol-box.ts';
import type { Model } from '../model.ts';
import { sourceText } from '../result.ts';
import { waterDensityOf } from '../water/sea-water.ts';
import { boltPlacesTables } from './bolt-places-table.ts';
import type { Section, Table } from './note.ts';
import { ownRowTable } from './own-row-table.ts';
import type { Print } from '../print-in.ts';

/** What the numbers rest on and nobody computed. */
export function assumptionSection(model: Model, print: Print): Section {
  const { protection, grid } = model.document;
  return {
    title: 'Assumptions',
    blocks: [
      {
        kind: 'list',
        items: [
          'Positive is up; arrows and signs show the force of the water on the plate.',
          'Panels bend as thin plates with small deflection. Pressed on, a panel bears along the tubes’ flats; pulled off, a bolted panel hangs on its bolts alone.',
          'Bolts, welds and tube walls carry the edge moment of a held edge whether or not the panel relies on it, and the in-plane pull of edges that cannot slide.',
          `The grid is solved as beams in one plane, joints rigid${grid.arrangement === 'stacked' ? '; that cross tubes lie on top of the main tubes is not in it' : ''}. Panels give the grid no stiffness.`,
          `The pressure shape on the plate is ${model.document.loads.pressureShape ? `stated (${model.document.loads.pressureShape.source})` : 'assumed: middle 1.5 times the mean'}; each panel takes the worse of that and its plan-area share${model.document.loads.panelShares === 'area, shape and flow' ? ', or its share by the flow where that is worse still' : ''}.`,
          `Strengths are taken at the end of life: ${protection.lossPerFace.source}.`,
          'Fabrication to EN 1090-2 execution class 3 or its equal, with weld inspection to match, is assumed; another class needs another look.',
          'Hydrodynamic loads of a gapped plate are uncertain by a factor of two or more without tests at the right amplitude.',
          ...model.basis.cautions,
        ],
      },
      factorTable(model),
      {
        kind: 'paragraph',
        text: `Water: density ${print.quantity(waterDensityOf(model.document), 'kg/m^3', 5)} at a depth of ${print.quantity(model.document.water.depth.si, 'm')}. ${protection.cathodic ? 'The plate is under cathodic protection.' : 'There is no cathodic protection.'} Design life: ${model.document.basis.life.typed}.`,
      },
    ],
  };
}

function factorTable({ basis }: Model): Table {
  return {
    kind: 'table',
    caption: `Factors of the design basis: ${basis.title}`,
    columns: [
      { title: 'Factor', width: 0.2 },
      { title: 'Value', width: 0.09, align: 'right' },
      { title: 'On what', width: 0.36 },
      { title: 'Source', width: 0.35 },
    ],
    rows: Object.entries(basis.factors).map(([name, { value, meaning, source, override }]) => [
      { box: symbolBox(name) },
      String(value),
      meaning,
      override ? `Overridden: ${override}` : sourceText(source),
    ]),
    loud: Object.values(basis.factors).flatMap(({ override }, i) => (override ? [i] : [])),
  };
}

/** What was entered, as it was read. */
export function inputSection(model: Model, print: Print): Section {
  return {
    title: 'Inputs',
    blocks: [
      tubeTable(model, print),
      materialTable(model, print),
      ...ownRowTable(model),
      designTable(model, print),
      ...boltPlacesTables(model, print),
      ...eyeTables(model, print),
    ],
  };
}

function tubeTable({ geometry }: Model, print: Print): Table {
  const same = (a: Tube, b: Tube) =>
    a.set === b.set &&
    a.section.id === b.section.id &&
    a.material.id === b.material.id &&
    a.flooded === b.flooded &&
    a.from === b.from &&
    a.to === b.to;
  const groups: Tube[][] = [];
  for (const tube of [...geometry.mainTubes, ...geometry.crossTubes]) {
    const group = groups.find(([first]) => first && same(first, tube));
    if (group) group.push(tube);
    else groups.push([tube]);
  }
  return {
    kind: 'table',
    caption: `Tubes, ${geometry.arrangement}`,
    columns: [
      { title: 'Tubes', width: 0.2 },
      { title: 'Section', width: 0.24 },
      { title: 'Material', width: 0.24 },
      { title: 'Length', width: 0.12, align: 'right' },
      { title: 'Inside', width: 0.2 },
    ],
    rows: groups.map((group) => {
      const [first] = group as [Tube];
      const { set, section, material, from, to, flooded, vent, drain } = first;
      const inside = flooded
        ? `flooded${vent ? `, vent ${print.length(vent)}` : ''}${drain ? `, drain ${print.length(drain)}` : ''}`
        : 'sealed';
      return [
        `${set} ${listed(group.map(({ id }) => id))}`,
        section.title,
        material.title,
        print.quantity(to - from, 'm'),
        inside,
      ];
    }),
  };
}

/** "1, 2, 3, 4" → "1 to 4" when they follow one another in the list's order and are more than three. */
const listed = (ids: readonly string[]): string =>
  ids.length > 3 ? `${ids[0]} to ${ids.at(-1)} (${ids.length})` : ids.join(', ');

function materialTable({ geometry }: Model, print: Print): Table {
  const materials = [
    ...new Map(
      [...geometry.panels, ...geometry.mainTubes, ...geometry.crossTubes].map(({ material }) => [
        material.id,
        material,
      ]),
    ).values(),
  ];
  return {
    kind: 'table',
    caption: 'Materials',
    columns: [
      { title: 'Material', width: 0.24 },
      { title: 'Modulus', width: 0.11, align: 'right' },
      { title: 'Density', width: 0.14, align: 'right' },
      { title: 'Yield (thinnest)', width: 0.14, align: 'right' },
      { title: 'Ultimate', width: 0.12, align: 'right' },
      { title: 'Source', width: 0.25 },
    ],
    rows: materials.map((m) => [
      m.title,
      print.quantity(m.youngModulus, 'GPa', 3),
      print.quantity(m.density, 'kg/m^3', 4),
      m.yieldStrength[0] ? print.quantity(m.yieldStrength[0].value, 'MPa', 3) : '–',
      m.ultimateStrength[0] ? print.quantity(m.ultimateStrength[0].value, 'MPa', 3) : '–',
      m.source ? sourceText(m.source) : 'no source',
    ]),
  };
}

function designTable({ geometry }: Model, print: Print): Table {
  const used = [...new Map(geometry.panels.map((panel) => [panel.designName, panel])).values()];
  return {
    kind: 'table',
    caption: 'Panel designs',
    columns: [
      { title: 'Design', width: 0.1 },
      { title: 'Panels', width: 0.16 },
      { title: 'Plate', width: 0.23 },
      { title: 'Overlap', width: 0.22 },
      { title: 'Fixing', width: 0.29 },
    ],
    rows: used.map(({ designName, design, material, thickness }) => {
      const { fixing } = design;
      const fixingText =
        fixing.kind === 'bolted'
          ? `${fixing.bolt} class ${fixing.class}, ${fixing.shear}, ${fixing.into}, ${fixing.hole === 'normal' ? '' : `${fixing.hole}${fixing.hole.endsWith('slot') ? ` ${fixing.slot}` : ' holes'}, `}${patternText(fixing)}`
          : `fillet weld, throat ${fixing.throat.typed}, ${fixing.pattern}${fixing.run && fixing.gap ? ` (${fixing.run.typed} on, ${fixing.gap.typed} off)` : ''}${fixing.plugs ? `, plugs ⌀ ${fixing.plugs.diameter.typed} up to ${fixing.plugs.pitch.typed} apart` : ''}${fixing.endReturn ? `, ends returned ${fixing.endReturn.typed}` : ''}${fixing.cornerThroat ? `, throat on a tube’s corner ${fixing.cornerThroat.value.typed} (${fixing.cornerThroat.source})` : ''}`;
      const ids = geometry.panels.filter((panel) => panel.designName === designName).map(({ id }) => id);
      return [
        designName,
        ids.join(', '),
        `${print.length(thickness)} ${material.title}, ${design.side}, ${design.support}, edges relied on as ${design.edges}`,
        overlapText(design, print),
        fixingText,
      ];
    }),
  };
}

function patternText(fixing: BoltedFixing): string {
  const pattern = boltPattern(fixing);
  return pattern.kind === 'lines'
    ? `pitch up to ${pattern.pitch.typed}, ${pattern.edgeDistance.typed} to the edge`
    : `bolts ${patternWords(fixing)}, see below`;
}

/** One number for each pair of tubes, or both where the two sides differ. */
function overlapText(design: PanelDesign, print: Print): string {
  const laps = lapsOf(design);
  const pair = (tubes: string, low: number, high: number, axis: string): string =>
    low === high
      ? `${print.length(low)} on ${tubes}`
      : `on ${tubes} ${print.length(low)} at lower ${axis}, ${print.length(high)} at higher ${axis}`;
  return `${pair('main tubes', laps.mainLow, laps.mainHigh, 'y')}; ${pair('cross tubes', laps.crossLow, laps.crossHigh, 'x')}`;
}

function eyeTables({ document }: Model, print: Print): Table[] {
  const { suspension, padEyes } = document.grid;
  const rows = [
    { name: `Suspension (${suspension.kind})`, points: suspension.attachments, eye: suspension.eye },
    ...(padEyes ? [{ name: 'Pad eyes', points: padEyes.points, eye: padEyes.eye }] : []),
  ];
  return [
    {
      kind: 'table',
      caption: 'Suspension and pad eyes',
      columns: [
        { title: 'What', width: 0.14 },
        { title: `Points (x, y), ${print.unit('mm')}`, width: 0.32 },
        { title: 'Plate', width: 0.29 },
        { title: 'Hole, pin, weld', width: 0.25 },
      ],
      rows: rows.map(({ name, points, eye }) => [
        name,
        points.map(({ id, x, y }) => `${id} (${print.drawn(x.si)}, ${print.drawn(y.si)})`).join('; '),
        `${print.drawn(eye.thickness.si)} × ${print.length(eye.width.si)}, ${eye.material}, hole's centre ${print.length(eye.height.si)} above the tube`,
        `hole ${print.length(eye.holeDiameter.si)}, pin ${print.length(eye.pinDiameter.si)}, weld throat ${print.length(eye.weldThroat.si)}${eye.cheek ? `, cheek plates ${print.length(eye.cheek.diameter.si)} by ${print.length(eye.cheek.thickness.si)} on each face, throat ${print.length(eye.cheek.weldThroat.si)}` : ''}${eye.footPlate ? `; bolted foot of ${print.length(eye.footPlate.thickness.si)}, ${eye.footPlate.pairs} pairs of ${eye.footPlate.bolt}, class ${eye.footPlate.class}, ${print.length(eye.footPlate.gauge.si)} across and ${print.length(eye.footPlate.pitch.si)} along` : ''}`,
      ]),
    },
  ];
}
