/** What a computation that yields its progress comes to, for whoever need not stop it. */
export function drained<T>(steps: Generator<unknown, T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
