import type { Appraisal } from '../appraise.ts';
import { graver, isKeptRule, type CheckRow } from '../checks/check-row.ts';
import type { Model } from '../model.ts';
import { printedUnit } from '../quantity/format-quantity.ts';
import { partId } from './part-draft.ts';
import type { Reading } from './reading.ts';
import type { Scene, ScenePart } from './scene.ts';

/** What can be laid over the plate: utilisation, load share, stress and deflection of the panels. */
export function readingsOf({ model, rows }: Appraisal, { parts }: Pick<Scene, 'parts'>): Reading[] {
  const ids = partsOfPlaces(parts);
  const { units } = model.document;
  const bending = rows.filter(({ id }) => id.startsWith('panel-bending'));
  const deflection = rows.filter(({ id }) => id.startsWith('panel-deflection'));
  return [
    utilisation(model, rows, ids),
    loadShare(model),
    ofPanels(model, bending, ids, {
      id: 'panel-stress',
      title: 'Bending stress of the panels',
      unit: printedUnit('MPa', units),
      loadCase: 'largest of all load cases, load factors included',
    }),
    ofPanels(model, deflection, ids, {
      id: 'panel-deflection',
      title: 'Deflection of the panels',
      unit: printedUnit('mm', units),
      loadCase: 'largest of all load cases, without load factors',
    }),
  ];
}

/** Part ids that a check's row speaks of. */
type PartsOf = (row: CheckRow) => readonly string[];

/**
 * A bay's rows speak of its panel, bolts or welds by the check's name; a panel over several bays, and its bolts and
 * welds, so take part in the rows of each. Rows on the whole plate or its suspension speak of no part.
 */
function partsOfPlaces(parts: readonly ScenePart[]): PartsOf {
  const byBay = new Map<string, string[]>();
  for (const { id, kind, bays, lift } of parts)
    if (lift !== 0)
      for (const bay of bays) {
        const key = `${kind} ${bay}`;
        const list = byBay.get(key);
        if (list) list.push(id);
        else byBay.set(key, [id]);
      }
  const known = new Set(parts.map(({ id }) => id));
  const one = (id: string): string[] => (known.has(id) ? [id] : []);
  return ({ id, place }) => {
    const [first] = id.split('-');
    switch (first) {
      case 'panel':
      case 'bolt':
      case 'weld':
        return byBay.get(`${first} ${place}`) ?? [];
      case 'tube':
        return one(partId('tube', place));
      case 'crossing':
        return one(partId('weld', place));
      case 'eye':
        return one(partId('attachment', place));
      default:
        return [];
    }
  };
}

/** The gravest row of each part. */
function gravest(rows: readonly CheckRow[], ids: PartsOf): Map<string, CheckRow> {
  const leaders = new Map<string, CheckRow>();
  for (const row of rows) {
    if (row.verdict === 'not applicable') continue;
    for (const id of ids(row)) {
      const leader = leaders.get(id);
      if (!leader || graver(row, leader) < 0) leaders.set(id, row);
    }
  }
  return leaders;
}

function verdictsOf(leaders: ReadonlyMap<string, CheckRow>): Reading['verdicts'] {
  const verdicts = new Map<string, 'fails' | 'cannot be judged'>();
  for (const [id, { verdict }] of leaders)
    if (verdict === 'fails' || verdict === 'cannot be judged') verdicts.set(id, verdict);
  return verdicts;
}

const words = (model: Model, row: CheckRow): string => {
  const situation = model.loads.situations.find(({ id }) => id === row.situation);
  return `${row.title}${situation ? `, ${situation.title}` : ''}${row.reason ? `: ${row.reason}` : ''}`;
};

const largest = (rows: readonly CheckRow[], of: (row: CheckRow) => number | null, ids: PartsOf) => {
  const most = new Map<string, { value: number; row: CheckRow }>();
  for (const row of rows) {
    const value = row.verdict === 'not applicable' ? null : of(row);
    if (value === null) continue;
    for (const id of ids(row)) if (value > (most.get(id)?.value ?? -Infinity)) most.set(id, { value, row });
  }
  return most;
};

function utilisation(model: Model, rows: readonly CheckRow[], ids: PartsOf): Reading {
  const leaders = gravest(rows, ids);
  const most = largest(rows, (row) => (isKeptRule(row) ? null : row.utilisation), ids);
  const open = rows.filter(
    (row) => (row.verdict === 'fails' || row.verdict === 'cannot be judged') && ids(row).length === 0,
  );
  const titles = [...new Set(open.map(({ title }) => title))];
  return {
    id: 'utilisation',
    title: 'Utilisation',
    unit: '1',
    loadCase: 'gravest of all checks and load cases',
    values: new Map([...leaders].map(([id]) => [id, most.get(id)?.value ?? null])),
    verdicts: verdictsOf(leaders),
    reasons: new Map([...leaders].map(([id, row]) => [id, words(model, row)])),
    limit: 1,
    ...(titles.length > 0 && { remark: `Open on the whole plate, at no one part: ${titles.join('; ')}.` }),
  };
}

/** The larger of the two shares that `loadReport` gives a field, summed over the bays of its panel. */
function loadShare({ geometry, loads }: Model): Reading {
  const values = geometry.panels.map(({ id, bays }): [string, number] => {
    const shares = bays.map((bay) => loads.shares.get(bay));
    return [
      partId('panel', id),
      shares.reduce((sum, share) => sum + (share ? Math.max(share.area, share.shape) : 0), 0),
    ];
  });
  return {
    id: 'load-share',
    title: 'Share of the load in service',
    unit: '1',
    loadCase: 'service: the larger of the plan-area share and the stated shape',
    values: new Map(values),
    verdicts: new Map(),
    reasons: new Map(),
  };
}

function ofPanels(
  model: Model,
  rows: readonly CheckRow[],
  ids: PartsOf,
  named: Pick<Reading, 'id' | 'title' | 'unit' | 'loadCase'>,
): Reading {
  const leaders = gravest(rows, ids);
  const most = largest(rows, ({ demand }) => demand, ids);
  return {
    ...named,
    values: new Map([...leaders].map(([id]) => [id, most.get(id)?.value ?? null])),
    verdicts: verdictsOf(leaders),
    reasons: new Map([...leaders].map(([id, row]) => [id, words(model, most.get(id)?.row ?? row)])),
  };
}
