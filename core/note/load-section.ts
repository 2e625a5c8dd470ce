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
  const designs = firstOfEachDesign(geometry.panels);
  for (const panel of designs) blocks.push(loadPathFigure(model, panel));
  return { title: 'Loads', blocks };
}

/** A residual of rounding has an order of magnitude and no more. */
const leftOver = (residual: number): string => (residual === 0 ? '0' : significant(residual, 1));
