import type { JointEndSolved } from '../solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { deflections } from './deflections.ts';
import { fixingForces } from './fixing-forces.ts';
import { tubeForces } from './tube-forces.ts';

/** What the joints' stiffness moves most, SI: largest deflection (up positive), moment of a tube in its upright plane, pull and
 *  shear of a bolt, force per length of a weld. */
export interface JointSpread {
  readonly end: JointEndSolved['end'];
  readonly deflection: number;
  readonly moment: number;
  readonly pull: number;
  readonly shear: number;
  readonly weld: number;
  readonly settled: boolean;
}

/** One loading at one end of the range of the joints' stiffness. */
export function jointSpread(end: JointEndSolved['end'], plate: ReadyPlate, solved: SolvedLoading): JointSpread {
  const { pull, shear, weld } = fixingForces(plate, solved).largest;
  return {
    end,
    deflection: deflections(plate, solved).largest.rise,
    moment: tubeForces(plate, solved).reduce((most, { largest }) => Math.max(most, Math.abs(largest.My.value)), 0),
    pull: pull?.pull ?? 0,
    shear: shear?.shear ?? 0,
    weld: weld?.resultant ?? 0,
    settled: solved.stage === 'linear' || solved.answer.settled,
  };
}
