import { expect, it } from 'vitest';
import { checks } from '../../core/checks/index.ts';
import { demoModel } from './model-of.ts';

const models = { 'partial factors': demoModel(), 'allowable stress': demoModel({ basis: { table: 'AISC 360 ASD' } }) };

it.each(checks.map((check) => [check.id, check] as const))(
  '%s reads each factor of its basis under the factor’s own name',
  (_, check) => {
    for (const [symbol, input] of Object.entries(check.inputs)) {
      if (input.from !== 'document: basis' || !/^(gamma_M|Omega_)/.test(symbol)) continue;
      const safety = symbol.startsWith('gamma') ? 'partial factors' : 'allowable stress';
      const { basis } = models[safety];
      expect(input.only, symbol).toBe(safety);
      expect(
        input.read(models[safety], check.places(models[safety])[0] ?? '', models[safety].loads.situations[0]!),
        symbol,
      ).toBe(basis.factors[symbol]!.value);
    }
  },
);
