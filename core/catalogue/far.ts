/** Words for a value further from a reference than a limit (a part of it), or none. `unit`: what it is printed in, in SI, and its symbol. */
export function far(
  id: string,
  name: string,
  value: number | null | undefined,
  reference: number | null | undefined,
  limit: number,
  against: string,
  [unit, symbol]: readonly [unit: number, symbol: string],
): string[] {
  if (value == null || reference == null) return [];
  const apart = value / reference - 1;
  if (Math.abs(apart) <= limit) return [];
  const print = (x: number): string => `${Number((x / unit).toPrecision(4))}${symbol && ` ${symbol}`}`;
  const percent = Number((Math.abs(apart) * 100).toPrecision(2));
  return [
    `“${id}”: ${name} ${print(value)} is ${percent} % ${apart > 0 ? 'above' : 'below'} ${against} (${print(reference)})`,
  ];
}
