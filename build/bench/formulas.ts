import { compiled } from '../../core/checks/generated.ts';
import { kernels } from '../../core/checks/kernels.ts';
import type { Model } from '../../core/model.ts';
import { byHand } from './by-hand.ts';
import { judgedPlaces, registered } from './hand-judged.ts';
import { interleaved } from './interleaved.ts';

/** Median times of the checks' formulas at every place of a model, inputs read and kernels warm: the engine's without trace, and
 *  those written by hand. */
export function formulasAndByHand(model: Model): Record<'engine' | 'hand', number> {
  const read = registered.flatMap((check) =>
    [...judgedPlaces(check, model)].map(({ given }) => ({
      given,
      rule: byHand[check.id]!,
      run: compiled[check.id]![model.basis.safety]!,
    })),
  );
  return interleaved(
    {
      engine: () => read.map(({ run, given }) => run(given, kernels)),
      hand: () => read.map(({ rule, given }) => rule(given)),
    },
    15,
  );
}
