import type { Json } from '../document/middle.ts';

/** An error that a licensed engineer would want to catch, to be planted in a copy of the middle sample. */
export interface Plant {
  readonly name: string;
  readonly plant: (document: Json) => void;
  /** The finding that tells it, or the limit state that it leaves open. */
  readonly toldBy: { readonly finding: string } | { readonly limitState: string };
  /** Words for the place, and for what the error does. */
  readonly place: string;
  readonly effect: string;
}

export const plants: readonly Plant[] = [
  {
    name: 'a range typed as an amplitude',
    plant: (d) => void (d['loads'].service.force = '92 kN'),
    toldBy: { finding: 'range-beside-amplitude' },
    place: 'service',
    effect: 'swings by 184.0 kN',
  },
  {
    name: 'a bay shifted so that its panel bears on one edge while it says four',
    plant: (d) =>
      void (d['designs']['underside'].overlap = { onMain: '46 mm', onCross: '2 mm', sides: { mainHigh: '2 mm' } }),
    toldBy: { finding: 'panel-does-not-bear' },
    place: 'Panel A1',
    effect: 'is said to bear on four sides',
  },
  {
    name: '40 ksi entered as 400 MPa',
    plant: (d) => {
      d['catalogue'] = { materials: [{ id: 'A40', title: 'Plate of the yard, 40 ksi', family: 'carbon steel', density: '7850 kg/m^3', youngModulus: '200 GPa', poisson: 0.3, yieldStrength: '400 MPa', ultimateStrength: '480 MPa', upToThickness: '20 mm', source: { document: 'certificate 3.1', clause: 'heat 12' } }] }; // prettier-ignore
      d['designs']['underside'].material = 'A40';
    },
    toldBy: { finding: 'row-far-from-catalogue' },
    place: 'A40',
    effect: '40 ksi',
  },
  {
    name: 'a bridle under a force up with a bolt row missing',
    plant: (d) => void (d['grid'].suspension = { ...d['grid'].suspension, kind: 'bridle', apex: '3 m' }),
    toldBy: { finding: 'line-slack' },
    place: 'service',
    effect: 'So it does with one bolt row lost',
  },
  {
    name: 'a high curve in air on a lap weld under water',
    plant: (d) => {
      d['fatigue'].environment = 'air';
      d['chosen'] = 'top-5-welded';
    },
    toldBy: { limitState: 'Fatigue' },
    place: 'Fatigue',
    effect: 'in air',
  },
];
