import type { Json } from './edit.ts';

/**
 * The merge patch (RFC 7396) that makes `after` out of `before`; undefined when they are equal. What lacks in `after`
 * is taken away by null, so neither may hold a null of its own inside a group.
 */
export function mergeDifference(before: Json | undefined, after: Json): Json | undefined {
  if (!isGroup(before) || !isGroup(after)) return same(before, after) ? undefined : after;
  const members: [string, Json][] = [];
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    if (!Object.hasOwn(after, key)) members.push([key, null]);
    else {
      const inner = mergeDifference(Object.hasOwn(before, key) ? before[key] : undefined, after[key]!);
      if (inner !== undefined) members.push([key, inner]);
    }
  }
  return members.length === 0 ? undefined : Object.fromEntries(members);
}

type Group = { readonly [key: string]: Json };
const isGroup = (value: Json | undefined): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether two JSON values are equal; the order of a group's members does not count. */
function same(a: Json | undefined, b: Json | undefined): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((value, i) => same(value as Json, b[i] as Json));
  if (!isGroup(a) || !isGroup(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}
