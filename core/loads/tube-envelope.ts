import type { TubeForces } from './situation.ts';
import type { Motion, TubeFrame } from './tube-frame.ts';
import type { Resultant } from './tube-lines.ts';

/** Largest internal forces of every tube over any number of solved loads. */
export class TubeEnvelope {
  readonly #frame: TubeFrame;
  readonly #most: Record<Exclude<keyof TubeForces, 'momentWithShear' | 'shearWithMoment'>, Float64Array>;
  readonly #momentWithShear: Float64Array;
  readonly #shearWithMoment: Float64Array;
  readonly #pair: Float64Array;
  /** Plastic modulus, m³, and shear area over √3, m²: by these moment and shear are made comparable. */
  readonly #modulus: Float64Array;
  readonly #shearArea: Float64Array;

  constructor(frame: TubeFrame) {
    this.#frame = frame;
    const { tubes } = frame.lines;
    const zero = () => new Float64Array(tubes.length);
    this.#most = {
      moment: zero(),
      sagging: zero(),
      hogging: zero(),
      shear: zero(),
      torque: zero(),
      axial: zero(),
      deflection: zero(),
      momentBound: zero(),
      wallLine: zero(),
    };
    this.#momentWithShear = zero();
    this.#shearWithMoment = zero();
    this.#pair = zero();
    this.#modulus = Float64Array.from(tubes, (t) => t.section.plasticY);
    this.#shearArea = Float64Array.from(tubes, (t) => t.section.shearAreaZ / Math.sqrt(3));
  }

  /** Takes in one solved load. plane: what the rise is measured from; null: the plate's mean plane. */
  add(motion: Motion, load: Float64Array, plane: Resultant | null): void {
    const { moment, sagging, hogging, shear, torque, deflection } = this.#most;
    const { tubes, mains } = this.#frame.lines;
    const [c0, cx, cy] = plane ?? [0, 0, 0];
    this.#frame.walk(motion, load, (tube, place, M, V, T, rise) => {
      const at = tubes[tube]!.at;
      const level = c0 + (tube < mains ? cx * place + cy * at : cx * at + cy * place);
      const [m, v] = [Math.abs(M), Math.abs(V)];
      if (m > moment[tube]!) moment[tube] = m;
      if (M > sagging[tube]!) sagging[tube] = M;
      if (-M > hogging[tube]!) hogging[tube] = -M;
      if (v > shear[tube]!) shear[tube] = v;
      if (Math.abs(T) > torque[tube]!) torque[tube] = Math.abs(T);
      if (Math.abs(rise - level) > deflection[tube]!) deflection[tube] = Math.abs(rise - level);
      const pair = (m / this.#modulus[tube]!) ** 2 + (v / this.#shearArea[tube]!) ** 2;
      if (pair > this.#pair[tube]!) {
        this.#pair[tube] = pair;
        this.#momentWithShear[tube] = m;
        this.#shearWithMoment[tube] = v;
      }
    });
  }

  /** Raises one of the other entries of each tube to at least these values. */
  raise(entry: 'axial' | 'momentBound' | 'wallLine', values: ArrayLike<number>): void {
    const most = this.#most[entry];
    for (let i = 0; i < most.length; i++) if (values[i]! > most[i]!) most[i] = values[i]!;
  }

  /** By tube id. */
  forces(): Map<string, TubeForces> {
    const { moment, sagging, hogging, shear, torque, axial, deflection, momentBound, wallLine } = this.#most;
    return new Map(
      this.#frame.lines.tubes.map(({ id }, i) => [
        id,
        {
          moment: moment[i]!,
          sagging: sagging[i]!,
          hogging: hogging[i]!,
          shear: shear[i]!,
          torque: torque[i]!,
          axial: axial[i]!,
          momentWithShear: this.#momentWithShear[i]!,
          shearWithMoment: this.#shearWithMoment[i]!,
          deflection: deflection[i]!,
          momentBound: momentBound[i]!,
          wallLine: wallLine[i]!,
        },
      ]),
    );
  }
}
