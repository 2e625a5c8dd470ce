import { tubeFields, type FieldValues, type PanelFieldId, type TubeFieldId } from '../scene/field.ts';
import { shellStress } from '../solve/elements/shell-stress.ts';
import type { PanelStress } from '../plate/results/panel-stress.ts';
import type { TubeForces } from '../plate/results/tube-forces.ts';

/** What varies within the parts, at the nodes of panels and at some stations of tubes (indices for each tube), as `panels.csv`
 *  and `tubes.csv` list it. */
export const fieldValues = (panels: readonly PanelStress[], tubes: readonly TubeForces[], stations: readonly (readonly number[])[]): FieldValues => ({
  panels: panels.map(({ nodes, forces, thickness, hot, top, bottom }) => {
    const empty = () => new Float32Array(nodes.length);
    const out: Record<PanelFieldId, Float32Array> = {
      vonMisesTop: Float32Array.from(top),
      vonMisesBottom: Float32Array.from(bottom),
      largerTop: empty(),
      largerBottom: empty(),
      lesserTop: empty(),
      lesserBottom: empty(),
    };
    for (let k = 0; k < nodes.length; k++) {
      const own = forces.subarray(6 * k, 6 * k + 6);
      const [above, below] = [shellStress(own, thickness, 'top'), shellStress(own, thickness, 'bottom')];
      out.largerTop[k] = above.largest;
      out.lesserTop[k] = above.least;
      out.largerBottom[k] = below.largest;
      out.lesserBottom[k] = below.least;
    }
    return { ...out, hot };
  }),
  tubes: tubes.map((tube, i) => ({
    ...(Object.fromEntries(tubeFields.map((name) => [name, Float32Array.from(stations[i]!, (k) => tube[name][k]!)])) as Record<TubeFieldId, Float32Array>),
    peaks: Object.fromEntries(tubeFields.map((name) => [name, tube.largest[name]])) as FieldValues['tubes'][number]['peaks'],
  })),
}); // prettier-ignore
