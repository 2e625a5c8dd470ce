import { laidRaw, optionLine, optionsOf, valueAt, type RawOption } from './edit.ts';
import type { RawDocument } from './read-document.ts';

/**
 * The options of another document as options of ours: each with the differences of its own bases joined into its own,
 * and with the panel designs that it needs and we lack. `freeId` gives each an id that is not taken here.
 */
export function optionsFrom(
  theirs: RawDocument,
  ours: RawDocument,
  freeId: (wanted: string) => string,
): readonly RawOption[] {
  const have = objectAt(ours, ['designs']);
  return optionsOf(theirs).map((option) => {
    const changes = optionLine(theirs, option.id).reduce<unknown>((all, { changes }) => joined(all, changes), {});
    const laid = laidRaw(theirs, option.id);
    const designs = objectAt(laid, ['designs']);
    const wanted = new Set([
      ...Object.values(objectAt(laid, ['panels'])),
      ...Object.keys(objectAt(changes, ['designs'])),
    ]);
    const lacking = Object.entries(designs).filter(([name]) => wanted.has(name) && !Object.hasOwn(have, name));
    const whole = lacking.length === 0 ? changes : joined(changes, { designs: Object.fromEntries(lacking) });
    return { ...option, base: null, id: freeId(option.id), changes: whole as RawOption['changes'] };
  });
}

/** Two differences, one after the other, as one: what takes a member away stays in it. */
function joined(first: unknown, then: unknown): unknown {
  if (!isObject(first) || !isObject(then)) return then;
  return Object.fromEntries(
    [...new Set([...Object.keys(first), ...Object.keys(then)])].map((key) => [
      key,
      !Object.hasOwn(then, key) ? first[key] : Object.hasOwn(first, key) ? joined(first[key], then[key]) : then[key],
    ]),
  );
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function objectAt(of: unknown, path: readonly string[]): Readonly<Record<string, unknown>> {
  const found = valueAt(of, path);
  return isObject(found) ? found : {};
}
