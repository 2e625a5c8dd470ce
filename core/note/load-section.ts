import type { Model } from '../model.ts';
import { significant } from '../quantity/format-quantity.ts';
import { firstOfEachDesign } from './drawing-section.ts';
import { loadPathFigure } from './load-path-figure.ts';
import { mergedRows } from './merged-rows.ts';
import type { Block, Section } from './note.ts';
import type { Print } from '../print-in.ts';

/** Load cases with what balances each, and each panel's share. */
export function loadSection(model: Model, print: Print): Section {
  const { loads, geometry } = model;
  const kN = (force: number) => print.quantity(force, 'kN');
  const blocks: Block[] = [
    { kind: 'list', items: loads.definition },
    {
      kind: 'table',
      caption: 'Load situations and equilibrium; up is positive. Left over: sum of the terms over the largest of them',
      columns: [
        { title: 'Case', width: 0.17 },
        { title: 'Path', width: 0.37 },
        { title: 'Factor', width: 0.08, align: 'right' },
        { title: 'Equilibrium', width: 0.38 },
      ],
      rows: loads.situations.map(({ title, path, loadFactor, balance, missing }) => [
        title,
        missing ? `Cannot be judged: ${missing}` : path,
        loadFactor.toFixed(2),
        missing
          ? '–'
          : `${balance.terms.map(({ name, force }) => `${name} ${kN(force)}`).join('; ')}; left over ${leftOver(balance.residual)}${balance.acceleration === 0 ? '' : `; acceleration ${print.quantity(balance.acceleration, 'm/s^2', 3)}`}. Balanced by ${balance.by}`,
      ]),
      loud: loads.situations.flatMap(({ missing }, i) => (missing ? [i] : [])),
    },
  ];
  const service = loads.situations.filter(({ loadCase }) => loadCase === 'service');
  const fields = geometry.panels.flatMap((panel) => panel.fields);
  if (fields.length > 0)
    blocks.push({
      kind: 'table',
      caption: `Shares of the load; the tubes' own share by area is ${(loads.tubeShare.area * 100).toFixed(2)} %`,
      columns: [
        { title: 'Bays', width: 0.2 },
        { title: 'Area', width: 0.14, align: 'right' },
        { title: 'Share by area', width: 0.13, align: 'right' },
        { title: 'Share by shape', width: 0.13, align: 'right' },
        ...service.map(({ title }) => ({
          title: `Pressure, ${title.toLowerCase()}`,
          width: 0.4 / Math.max(service.length, 1),
          align: 'right' as const,
        })),
      ],
      ...mergedRows(
        fields.map(({ bay, area }) => {
          const share = loads.shares.get(bay);
          return {
            loud: false,
            cells: [
              bay,
              print.quantity(area, 'm^2'),
              share ? `${(share.area * 100).toFixed(2)} %` : '–',
              share ? `${(share.shape * 100).toFixed(2)} %` : '–',
              ...service.map(({ pressures, missing }) =>
                missing ? '–' : print.quantity(pressures.get(bay) ?? 0, 'kPa'),
              ),
            ],
          };
        }),
        0,
      ),
    });
  blocks.push(...flowShares(model));
  const designs = firstOfEachDesign(geometry.panels);
  for (const panel of designs) blocks.push(loadPathFigure(model, panel));
  return { title: 'Loads', blocks };
}

/** Which share governs each panel, and what plain area would give; nothing where the document leaves the flow out. */
function flowShares({ loads, geometry }: Model): Block[] {
  const percent = (part: number): string => `${significant(100 * part, 3)} %`;
  const rows = geometry.bays.flatMap(({ id }) => {
    const share = loads.shares.get(id);
    if (!share?.flow) return [];
    const { area, shape, flow } = share;
    const most = Math.max(area, shape, flow.peak);
    const governs = most === flow.peak ? 'flow' : most === shape ? 'shape' : 'area';
    return [[id, percent(area), percent(shape), percent(flow.inertia), percent(flow.drag), percent(flow.peak), governs, significant(most / area, 3)]]; // prettier-ignore
  });
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: 'Which share each panel is judged with, of the peak force of the plate. Worst phase: inertia and drag in the stated motion, at their own phases, worst of low, best and high drag. Last: panel and fixings carry so many times what plain area would give', // prettier-ignore
      columns: [
        { title: 'Bay', width: 0.1 },
        ...['Area', 'Shape', 'Inertia', 'Drag', 'Worst phase'].map((title) => ({ title, width: 0.13, align: 'right' as const })),
        { title: 'Governs', width: 0.12 },
        { title: 'Over area', width: 0.13, align: 'right' },
      ],
      rows,
    },
  ]; // prettier-ignore
}

/** A residual has an order of magnitude and no more; one of rounding is another on every machine. */
const leftOver = (residual: number): string =>
  Math.abs(residual) < 1e-12 ? 'nothing but rounding' : significant(residual, 1);
