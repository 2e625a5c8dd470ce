import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../core/tank/least-squares.ts';

/** NIST Statistical Reference Datasets, Longley (1967): y, x1 … x6. Data and certified values from memory. */
const longley = `60323 83 234289 2356 1590 107608 1947
61122 88.5 259426 2325 1456 108632 1948
60171 88.2 258054 3682 1616 109773 1949
61187 89.5 284599 3351 1650 110929 1950
63221 96.2 328975 2099 3099 112075 1951
63639 98.1 346999 1932 3594 113270 1952
64989 99 365385 1870 3547 115094 1953
63761 100 363112 3578 3350 116219 1954
66019 101.2 397469 2904 3048 117388 1955
67857 104.6 419180 2822 2857 118734 1956
68169 108.4 442769 2936 2798 120445 1957
66513 110.8 444546 4681 2637 121950 1958
68655 112.6 482704 3813 2552 123366 1959
69564 114.2 502601 3931 2514 125368 1960
69331 115.7 518173 4806 2572 127852 1961
70551 116.9 554894 4007 2827 130081 1962`
  .split('\n')
  .map((line) => line.split(' ').map(Number));
const column = (i: number): Float64Array => Float64Array.from(longley, (row) => row[i]!);
const ones = new Float64Array(longley.length).fill(1);

describe('least squares', () => {
  it('gives the certified coefficients and errors of NIST StRD “Longley” to eight digits', () => {
    const { theta, residual, inverse, condition } = leastSquares([ones, ...[1, 2, 3, 4, 5, 6].map(column)], column(0));
    const certified = [-3482258.63459582, 15.0618722713733, -0.0358191792925910, -2.02022980381683, -1.03322686717359, -0.0511041056535807, 1829.15146461355]; // prettier-ignore
    theta.forEach((value, j) => expect(Math.abs(value / certified[j]! - 1)).toBeLessThan(1e-8));
    const s = Math.sqrt(residual.reduce((sum, e) => sum + e * e, 0) / (16 - 7));
    expect(Math.abs(s - 304.854073561965)).toBeLessThan(1e-7);
    expect(Math.abs(s * Math.sqrt(inverse[0]!) - 890420.383607373)).toBeLessThan(1e-2);
    // a data set known for columns that all but depend on each other
    expect(condition).toBeGreaterThan(1000);
  });

  it('has condition 1 and the plain means for orthogonal columns', () => {
    const { theta, condition } = leastSquares(
      [Float64Array.of(1, 1, 1, 1), Float64Array.of(1, -1, 1, -1)],
      Float64Array.of(5, 1, 7, 3),
    );
    expect([...theta]).toEqual([expect.closeTo(4, 12), expect.closeTo(2, 12)]);
    expect(condition).toBeCloseTo(1, 12);
  });

  it('refuses columns that are not independent, and fewer readings than unknowns', () => {
    const x = Float64Array.of(1, 2, 3);
    expect(() => leastSquares([x, x.map((v) => 3 * v)], x)).toThrow(/cannot be told apart/);
    expect(() => leastSquares([x.slice(0, 1), x.slice(1, 2)], Float64Array.of(1))).toThrow(/1 readings cannot give 2/);
  });
});
