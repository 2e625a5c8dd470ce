import { distinct, touch } from '../../solve/lattice-lines.ts';

/** Nodes along one tube, m, ascending: at each `exact` place (crossings, attachments, ends), at the places where panels
 *  bear or are fixed (those closer than `least` share one: the section is rigid, so the offset along it is exact), and
 *  between them so that no beam is longer than `size`. */
export function tubeStations(
  exact: readonly number[],
  wanted: readonly number[],
  { size, least }: { readonly size: number; readonly least: number },
): Float64Array {
  const stations = distinct(exact, touch);
  for (const place of distinct(wanted, touch)) {
    const i = firstFrom(stations, place);
    const near = Math.min(place - (stations[i - 1] ?? -Infinity), (stations[i] ?? Infinity) - place);
    if (near >= least) stations.splice(i, 0, place);
  }
  const out = [stations[0]!];
  for (let i = 1; i < stations.length; i++) {
    const [from, to] = [stations[i - 1]!, stations[i]!];
    const steps = Math.ceil((to - from) / size - touch);
    for (let k = 1; k < steps; k++) out.push(from + ((to - from) * k) / steps);
    out.push(to);
  }
  return Float64Array.from(out);
}

/** Index of the first station at or after a place. */
function firstFrom(stations: readonly number[], place: number): number {
  let [low, high] = [0, stations.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stations[middle]! < place) low = middle + 1;
    else high = middle;
  }
  return low;
}
