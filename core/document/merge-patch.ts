import type { MergePatch } from './schema.ts';

/** Lays differences on a value: JSON Merge Patch, RFC 7396. Null takes a member away; anything that is no object replaces. */
export function mergePatch(target: unknown, patch: MergePatch): unknown {
  if (typeof patch !== 'object' || patch === null || Array.isArray(patch)) return patch;
  const result: Record<string, unknown> = typeof target === 'object' && target !== null && !Array.isArray(target) ? { ...target } : {};
  for (const [key, change] of Object.entries(patch)) {
    if (change === null) delete result[key];
    else result[key] = mergePatch(Object.hasOwn(result, key) ? result[key] : undefined, change);
  }
  return result;
}
