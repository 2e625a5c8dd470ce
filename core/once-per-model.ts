import type { Model } from './model.ts';

/** The same answer for the same model, made when it is first asked for: several checks, the sheet and the note ask alike. */
export function oncePerModel<T>(make: (model: Model) => T): (model: Model) => T {
  const made = new WeakMap<Model, { readonly value: T }>();
  return (model) => {
    const known = made.get(model);
    if (known) return known.value;
    const value = make(model);
    made.set(model, { value });
    return value;
  };
}
