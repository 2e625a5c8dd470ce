import { expect, it } from 'vitest';
import { checkRows } from '../core/checks/evaluate-check.ts';
import { panelDeflectionFourSides } from '../core/checks/panel-deflection-four-sides.ts';
import { tubeDeflection } from '../core/checks/tube-deflection.ts';
import { limitStates } from '../core/limit-states.ts';
import { demoModel } from './checks/model-of.ts';
import { allCases, waterOnly } from './loads/plates.ts';

const model = demoModel(waterOnly, allCases);
const rows = [panelDeflectionFourSides, tubeDeflection].flatMap((check) => checkRows(check, model).rows);
const state = (of: typeof rows, name: string) => limitStates(model, of).find((s) => s.name === name)!;
const handling = 'Lifting, crossing the surface, deck';
const service = 'Deflection in service';

it('files deflection in service under serviceability, and that of lifts, crossing and deck under handling', () => {
  for (const { limitState, loadCase } of rows.filter(({ verdict }) => verdict !== 'not applicable'))
    expect([loadCase, limitState]).toEqual([loadCase, loadCase === 'service' ? 'serviceability' : 'handling']);
  expect(new Set(rows.map(({ loadCase }) => loadCase))).toEqual(
    new Set(['service', 'crossing the surface', 'lifting out', 'lift in air', 'support on deck']),
  );
  // 4 panels and 7 tubes, service down and up; panels are borne on four sides only where they are pressed down
  const [deflection, lift] = [state(rows, service), state(rows, handling)];
  expect(deflection.made).toBe(4 + 2 * 7);
  expect(lift.made).toBe(3 * 4 + 4 * 7);
  expect([deflection.row!.loadCase, deflection.highest!.loadCase]).toEqual(['service', 'service']);
});

it('lets a deflection that is too large in a lift fail the lift, and not the service', () => {
  const failing = rows.map((row) =>
    row.loadCase === 'lift in air' ? { ...row, verdict: 'fails' as const, utilisation: 2 } : row,
  );
  const sound = rows.map((row) => ({ ...row, verdict: 'passes' as const, utilisation: 0.5 }));
  expect(state(sound, service).verdict).toBe('passes');
  expect(state([...failing.filter(({ loadCase }) => loadCase === 'lift in air'), ...sound], service)).toMatchObject({
    verdict: 'passes',
    fails: 0,
    highest: { utilisation: 0.5 },
  });
  expect(state(failing, handling)).toMatchObject({ verdict: 'fails', row: { loadCase: 'lift in air' } });
});

it('says of a limit state without a check that it is not judged', () => {
  expect(state([], service)).toMatchObject({ verdict: 'not judged', made: 0, row: null });
});
