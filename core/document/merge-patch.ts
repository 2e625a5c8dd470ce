import type { MergePatch } from './schema.ts';

/** Lays differences on a value: JSON Merge Patch, RFC 7396. Null takes a member away; anything that is no object replaces. */
export function mergePatch(target: unknown, patch: MergePatch): unknown {
  if (typeof patch !== 'object' || patch === null || Array.isArray(patch)) return patch;
  // A map, because setting a member called __proto__ of an object would set its prototype.
  const members = new Map<string, unknown>(
    typeof target === 'object' && target !== null && !Array.isArray(target) ? Object.entries(target) : [],
  );
  for (const [key, change] of Object.entries(patch)) {
    if (change === null) members.delete(key);
    else members.set(key, mergePatch(members.get(key), change));
  }
  return Object.fromEntries(members);
}
