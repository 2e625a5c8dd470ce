/** For a worker: runs what it is given behind the messages that have come meanwhile, so that a newer edit or a cancel is
 *  heard first. A message to ourselves queues there; a timer would wait longer. */
export function behindMessages(): (goOn: () => void) => void {
  const channel = new MessageChannel();
  let waiting: (() => void)[] = [];
  channel.port1.onmessage = () => {
    const now = waiting;
    waiting = [];
    for (const goOn of now) goOn();
  };
  return (goOn) => {
    waiting.push(goOn);
    channel.port2.postMessage(null);
  };
}
