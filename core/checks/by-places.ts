import type { Model } from '../model.ts';
import { boltForceInputs } from './bolt-inputs.ts';
import { inForm } from './by-solution.ts';
import type { Check, Input, Step } from './check.ts';
import { listedInputs } from './listed-inputs.ts';

/**
 * A check of bolts in lines as it judges bolts on listed places: kernels of a ring of even pitches give way to values of the
 * real places, all other lines are the check's own. Computed, traced and printed like any check, under the id
 * `<id>-by-places`. A check that asks for no ring is its own form. Each is made once.
 */
export function byPlaces(check: Check): Check {
  const known = made.get(check);
  if (known) return known;
  const form = asksForRing(check) ? inForm(changed(check), listedInputs, `${check.id}-by-places`) : check;
  made.set(check, form);
  made.set(form, form);
  return form;
}

/** The form that holds at a place. */
export const formAt = (check: Check, { fields }: Model, place: string): Check =>
  fields.get(place)?.listed === undefined ? check : byPlaces(check);

const made = new WeakMap<Check, Check>();

const ring = new Set<Input>([boltForceInputs.n_x, boltForceInputs.n_y]);
const asksForRing = ({ inputs }: Check): boolean => Object.values(inputs).some((input) => ring.has(input));

/** What stands in place of a kernel of the ring. Pressure and plate by the symbols that the kernel was asked with. */
const byKernel: Readonly<Record<string, (args: readonly string[]) => string>> = {
  'plate.bolted.boltPush': (args) => `A_1 * ${args[5]}`,
  'bolts.rowLost.group': (args) => `A_g * ${args[6]}`,
  'bolts.rowLost.plate': (args) => `A_r * ${args[5]}`,
  'plate.bolted.stress': (args) => `S_1 * ${args[5]} / ${args[2]}^2`,
  'bolts.rowLost.stress': (args) => `S_r * ${args[5]} / ${args[2]}^2`,
  'plate.bolted.deflection': ([, , t, E, nu, q]) => `12 * (1 - ${nu}^2) * W_1 * ${q} / (${E} * ${t}^3)`,
  'bolts.rowLost.inPlane': (args) => `${args[4]} * sqrt((1 / n_l + e_W * y_W / I_p)^2 + (e_W * x_W / I_p)^2)`,
};

/** Inputs of the same name as a step take its place. */
const givenSteps = ['s_x', 's_y', 'a_p', 'b_p', 'C'] as const;

/** What tears between two bolts tears at the narrowest step, whatever the widest hangs on a bolt. */
const torn = new Set(['A_ntx', 'A_nty', 'B_net', 'R_low', 'R_high']);
/** What the ends of a row give is shared by the longer row. */
const ends = new Set(['A_nvx', 'A_nvy', 'B_x', 'B_y']);

function listedStep(step: Step, isBlock: boolean): Step {
  if ('kernel' in step) {
    const of = byKernel[step.kernel];
    const { kernel: _, arguments: args, ...rest } = step;
    return of ? { ...rest, expression: of(args) } : step;
  }
  let { expression } = step;
  expression = expression
    .replace('(2 * n_x + 2 * n_y - 4 - min(n_x, n_y))', 'n_m')
    .replace('(2 * n_x + 2 * n_y - 4)', 'n_b');
  if (isBlock && torn.has(step.symbol)) expression = expression.replace(/\bs_([xy])\b/g, 's_n$1');
  if (isBlock && ends.has(step.symbol)) expression = expression.replace(/\bn_([xy])\b/g, 'n_m$1');
  return expression === step.expression ? step : { ...step, expression };
}

function changed(check: Check): Check {
  const isBlock = check.id.startsWith('bolt-block-tear');
  const replaced = (steps: readonly Step[]): readonly Step[] =>
    steps
      .filter(({ symbol }) => !(givenSteps as readonly string[]).includes(symbol))
      .map((step) => listedStep(step, isBlock));
  const second = { ...check.second, steps: replaced(check.second.steps) };
  const steps = Object.fromEntries(Object.entries(check.steps).map(([safety, own]) => [safety, replaced(own)]));
  return { ...check, steps, second, cautions: check.cautions.map(listedCaution) };
}

const listedCaution = (text: string): string =>
  text === 'Bolts as rigid points at even pitches.' ? 'Bolts as rigid points where they are listed.' : text;
