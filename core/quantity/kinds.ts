/** The kinds of quantity that a document holds, each with its SI unit and the word an engineer uses for it. */
export const kinds = {
  length: { unit: 'm', word: 'a length', example: '10 mm or 3/8 in' },
  area: { unit: 'm^2', word: 'an area', example: '7 m^2' },
  volume: { unit: 'm^3', word: 'a volume', example: '0.2 m^3' },
  modulus: { unit: 'm^3', word: 'a section modulus', example: '55.9 cm^3' },
  inertia: { unit: 'm^4', word: 'a second moment of area', example: '279 cm^4' },
  mass: { unit: 'kg', word: 'a mass', example: '12 kg or 0.5 t' },
  density: { unit: 'kg/m^3', word: 'a density', example: '1025 kg/m^3' },
  areaMass: { unit: 'kg/m^2', word: 'a mass for an area', example: '0.6 kg/m^2' },
  lineMass: { unit: 'kg/m', word: 'a mass for a length', example: '0.1 kg/m' },
  force: { unit: 'N', word: 'a force', example: '12 kN or 300 lbf' },
  lineForce: { unit: 'N/m', word: 'a force along a length', example: '1.5 kN/m' },
  damping: { unit: 'N*s/m', word: 'a damping', example: '40 kN s/m' },
  stiffness: { unit: 'N/m', word: 'a stiffness', example: '2 kN/mm' },
  stress: { unit: 'Pa', word: 'a stress or pressure', example: '355 MPa, 40 ksi or 5 kPa' },
  turningStiffness: { unit: 'N*m/rad', word: 'a stiffness against turning', example: '500 kNm/rad' },
  moment: { unit: 'N*m', word: 'a moment', example: '2.5 kN m' },
  time: { unit: 's', word: 'a time', example: '8 s or 10 years' },
  acceleration: { unit: 'm/s^2', word: 'an acceleration', example: '0.02 m/s^2' },
  speed: { unit: 'm/s', word: 'a speed', example: '0.5 m/s' },
  angle: { unit: 'rad', word: 'an angle', example: '3 deg' },
  resistance: { unit: 'ohm', word: 'a resistance', example: '0.05 ohm' },
  resistivity: { unit: 'ohm*m', word: 'a resistivity', example: '0.3 ohm m' },
  temperature: { unit: 'K', word: 'a temperature', example: '9 degC or 48 degF' },
} as const;

export type Kind = keyof typeof kinds;

/** A quantity as typed and in SI. */
export interface Quantity {
  readonly si: number;
  readonly typed: string;
}
