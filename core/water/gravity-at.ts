import { refusal } from '../refusal.ts';

/**
 * Local acceleration of gravity in m/s² at latitude φ (rad) and height above the sea (m, negative below ground):
 *   g = 9.780318 (1 + 0.0053024 sin² φ − 0.0000058 sin² 2φ) − 0.000003085 h
 * Refuses a latitude past a pole. Below the sea surface take h = 0: water above attracts upwards, and what is left
 * of the change (1.1e-6 m/s² for each metre) is in `seaPressure`.
 * Source: WELMEC directive 2, gravity zones; checked against 52.3°, 80 m.
 */
export function gravityAt(latitude: number, height = 0): number {
  if (!(Math.abs(latitude) <= Math.PI / 2))
    throw refusal({
      what: `A latitude of ${((latitude * 180) / Math.PI).toFixed(2)} degrees lies past the pole`,
      where: { path: 'water.latitude' },
      mend: 'Give a latitude from -90 deg to 90 deg.',
    });
  return (
    9.780318 * (1 + 0.0053024 * Math.sin(latitude) ** 2 - 0.0000058 * Math.sin(2 * latitude) ** 2) - 3.085e-6 * height
  );
}
