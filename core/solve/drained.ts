/** What a computation that yields its progress comes to, for whoever need not stop it. */
export function drained<T>(steps: Generator<unknown, T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** The same computation, each step of its progress told in other words. */
export function* retold<Step, Told, T>(steps: Generator<Step, T>, tell: (step: Step) => Told): Generator<Told, T> {
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield tell(step.value);
  return step.value;
}
