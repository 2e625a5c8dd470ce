import { describe, expect, it } from 'vitest';
import { boltEdgeDistance } from '../../core/checks/bolt-edge-distance.ts';
import { boltGroupInPlane } from '../../core/checks/bolt-group-in-plane.ts';
import { boltPitch } from '../../core/checks/bolt-pitch.ts';
import { boltShear } from '../../core/checks/bolt-shear.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { panelBendingFourSides } from '../../core/checks/panel-bending-four-sides.ts';
import { demoModel, reads } from './model-of.ts';

const model = demoModel();
const allowable = demoModel({ basis: { table: 'AISC 360 ASD' } });

describe('what many checks read', () => {
  it('is in SI: S355 plate of 10 mm has f_y = 355 MPa (EN 10025-2, Table 6), E = 210 GPa and ν = 0.3 (EN 1993-1-1, 3.2.6)', () => {
    expect(reads(panelBendingFourSides, 'f_y', model, 'A1')).toBe(355e6);
    expect(reads(panelBendingFourSides, 'E', model, 'A1')).toBe(210e9);
    expect(reads(panelBendingFourSides, 'nu', model, 'A1')).toBe(0.3);
  });

  it.each([boltTension, boltShear])(
    'is in SI: an M12 of class 8.8 has A_s = 84.3 mm² and f_ub = 800 MPa (ISO 898-1), its shank π 12²/4 mm²',
    (check) => {
      expect(reads(check, 'A_s', model, 'A1')).toBeCloseTo(84.3e-6, 8);
      expect(reads(check, 'A_b', check === boltTension ? allowable : model, 'A1')).toBeCloseTo(
        (Math.PI / 4) * 144e-6,
        8,
      );
      expect(reads(check, 'f_ub', model, 'A1')).toBe(800e6);
    },
  );

  it('is in SI: a nominal tensile stress near three quarters of f_ub (AISC 360, Table J3.2)', () => {
    expect(reads(boltTension, 'F_nt', allowable, 'A1')).toBeGreaterThan(590e6);
    expect(reads(boltTension, 'F_nt', allowable, 'A1')).toBeLessThan(650e6);
  });

  it('is in SI: the edge distance typed as 30 mm, a pitch of at most the 200 mm typed, g = 9.80665 m/s² (ISO 80000-3)', () => {
    expect(reads(boltEdgeDistance, 'e_1', model, 'A1')).toBeCloseTo(0.03, 9);
    expect(reads(boltPitch, 'p_1', model, 'A1')).toBeGreaterThan(0.1);
    expect(reads(boltPitch, 'p_1', model, 'A1')).toBeLessThanOrEqual(0.2);
    expect(reads(boltGroupInPlane, 'g', model, 'A1')).toBe(9.80665);
  });
});
