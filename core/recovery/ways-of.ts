import type { RecoveryFields, ReleaseFields, WayFields } from '../document/recovery-field.ts';
import type { PlateDocument } from '../document/schema.ts';
import { addedByEquipment, equipmentOf } from './equipment.ts';
import { secondsInYear } from './lift-stages.ts';
import { bothFail, bothHidden, chainFails, lettingGoFalsely, meanHidden } from './redundancy.ts';

/** One way of getting the plate back, beside the others. */
export interface WayReport {
  readonly id: string;
  readonly title: string;
  readonly kind: WayFields['kind'];
  readonly chosen: boolean;
  /** What has to work, one after the other. */
  readonly chain: readonly string[];
  /** Not getting the plate back on a demand, and a release by itself within the deployment; null where a rate is not given, or nothing is there to let go. */
  readonly fails: number | null;
  readonly releasesFalsely: number | null;
  /** Which rates nobody gave. */
  readonly without: readonly string[];
  readonly commonCause: readonly string[];
  /** Place in the order of trust, from 1: by probability where every way has one, else by what is twofold. */
  readonly rank: number;
  readonly mass: number;
  readonly weightInWater: number;
  readonly left: string;
  readonly cautions: readonly string[];
}

/**
 * Ways side by side. Numbers only where the user or a maker answers for every rate; else an order: ways that let go by two unlike
 * releases first, then by two alike, then by one; among these the shorter chain.
 */
export function waysOf(document: PlateDocument): readonly WayReport[] {
  const recovery = document.recovery as RecoveryFields;
  const reports = recovery.ways.map((way) => wayReport(document, recovery, way));
  const numbers = reports.every(({ fails }) => fails !== null);
  const trust = (way: (typeof reports)[number]): number =>
    numbers ? way.fails! : -10 * way.twofold + way.chain.length;
  const order = [...reports].sort((a, b) => trust(a) - trust(b));
  return reports.map(({ twofold: _twofold, ...way }) => ({ ...way, rank: 1 + order.findIndex(({ id }) => id === way.id) })); // prettier-ignore
}

function wayReport(document: PlateDocument, recovery: RecoveryFields, way: WayFields) {
  const releases = way.releases.map((id) => recovery.releases.find((one) => one.id === id)!);
  const without: string[] = [];
  const rateOf = (name: string, given: { readonly value: number } | undefined): number | null => {
    if (given) return given.value;
    without.push(name);
    return null;
  };
  const parts = way.parts.map(({ name, fails }) => rateOf(`${name}: fails`, fails));
  const released = releaseFails(recovery, releases, without);
  const all = [...parts, ...(released === undefined ? [] : [released])];
  const fails = all.every((p) => p !== null) && all.length > 0 ? chainFails(all) : null;
  const falsely = [
    ...releases.map(({ id, falsePerYear }) => rateOf(`release ${id}: lets go by itself`, falsePerYear)),
    ...way.parts.flatMap(({ falsePerYear }) => (falsePerYear ? [falsePerYear.value] : [])),
  ];
  const unlike = new Set(releases.map(({ kind }) => kind)).size;
  const { mass, weightInWater } = addedByEquipment(equipmentOf(document, way), document);
  return {
    id: way.id,
    title: way.title,
    kind: way.kind,
    chosen: way.id === recovery.chosen,
    chain: [...releases.map(({ id, kind }) => `release ${id} (${kind})`), ...way.parts.map(({ name }) => name)],
    fails,
    releasesFalsely:
      falsely.length > 0 && falsely.every((rate) => rate !== null)
        ? lettingGoFalsely(falsely, recovery.deployment.si / secondsInYear)
        : null,
    without,
    commonCause: releases.length < 2 ? [] : commonCauses(releases),
    twofold: releases.length < 2 ? releases.length : releases.length + unlike,
    mass,
    weightInWater,
    left: way.left,
    cautions: cautionsOf(way),
  };
}

/** Not letting go when asked: undefined where nothing has to let go, null where a rate is missing. */
function releaseFails(
  { inspection, deployment, commonCause }: RecoveryFields,
  releases: readonly ReleaseFields[],
  without: string[],
): number | null | undefined {
  const [a, b] = releases;
  if (!a) return undefined;
  const years = (inspection ?? deployment).si / secondsInYear;
  const named = releases.filter(({ fails, failsPerYear }) => !fails && !failsPerYear);
  for (const { id } of named) without.push(`release ${id}: fails`);
  if (b && !commonCause) without.push('the part of failures with a common cause');
  if (named.length > 0) return null;
  const one = (release: ReleaseFields): number => release.fails?.value ?? Math.min(1, meanHidden(release.failsPerYear!.value, years)); // prettier-ignore
  if (!b) return one(a);
  if (!commonCause) return null;
  return a.failsPerYear && b.failsPerYear && !a.fails && !b.fails
    ? Math.min(1, bothHidden(a.failsPerYear.value, b.failsPerYear.value, years, commonCause.beta))
    : bothFail(one(a), one(b), commonCause.beta);
}

function commonCauses(releases: readonly ReleaseFields[]): string[] {
  const alike = new Set(releases.map(({ kind }) => kind)).size < releases.length;
  return [
    releases.every(({ antifouled }) => antifouled)
      ? 'growth on both at once, held off by antifouling as long as that lasts'
      : 'growth on both at once: not both are antifouled',
    'the same installer, rigging and day',
    'the same corrosion, sediment and fishing gear at one place',
    ...(alike
      ? ['two of one kind: one maker’s fault, one battery age, one command takes both']
      : ['two kinds that share their mounting and their rope store']),
  ];
}

function cautionsOf({ kind }: WayFields): string[] {
  switch (kind) {
    case 'standing line':
      return ['A standing line tangles, chafes, is run over and catches wildlife and gear; mark and inspect it.'];
    case 'released float':
      return [
        'A release holds stored energy: nobody stands over a loaded release or its float, on deck or in the water.',
      ];
    case 'lift bag':
      return [
        'Air in a lift bag grows as it rises: the plate may come up out of control. A last resort, for certified people.',
      ];
    case 'diver':
      return [
        'Divers are for certified contractors under local law: no one below or inside the plate’s lines, stored energy let out first.',
      ];
  }
}
