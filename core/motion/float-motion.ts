import { filtered, highPass, integrateTwice } from './filtered.ts';
import type { SeaChannels, SeaSetup } from './sea-setup.ts';

/**
 * Height of the float where the line is fastened, m:  z = ∬ a + arm · sin(pitch), each with the high pass. An accelerometer
 * that turns with the float reads along its mast; of that and the reading ahead, the vertical is
 *   f_z cos θ + f_x sin θ,
 * gravity in both. Without the reading ahead f_x is nil: a float that lies on the waves' slope feels no pull along its deck.
 */
export function floatMotion({ dt, acceleration, ahead, pitch }: SeaChannels, setup: SeaSetup): Float64Array {
  const keep = highPass(setup.highPass);
  const up =
    setup.axes === 'body' && pitch
      ? acceleration.map((a, i) => a * Math.cos(pitch[i]!) + (ahead ? ahead[i]! * Math.sin(pitch[i]!) : 0))
      : acceleration;
  const own = filtered(up, dt, integrateTwice(keep));
  if (!pitch || setup.arm === 0) return own;
  const raised = filtered(
    pitch.map((angle) => setup.arm * Math.sin(angle)),
    dt,
    keep,
  );
  return own.map((z, i) => z + raised[i]!);
}
