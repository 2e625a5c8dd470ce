import { useEffect, useRef } from 'react';
import type { FromGains, OptionGains, ToGains } from '../../core/engine/gains-service.ts';
import { useWorkbench } from './workbench.ts';

/** What options gain in the water, by option; those that are not here yet are being worked out. */
export type WaterGainsShown = ReadonlyMap<string | null, OptionGains>;

/** Rest after an edit before options are reckoned anew, ms: they take a second each, and more typing is likely. */
const rest = 700;

/** Keeps what options gain in the water up to date with the document, apart from the engine. */
export function useWaterGains(): void {
  const view = useWorkbench((state) => state.document);
  const worker = useRef<Worker | null>(null);
  const edit = useRef(0);
  const asked = useRef('');
  useEffect(() => {
    const started = new Worker(new URL('gains-worker.js', document.baseURI), { type: 'module' });
    worker.current = started;
    started.onmessage = ({ data }: MessageEvent<FromGains>) => {
      if (data.edit !== edit.current) return;
      useWorkbench.setState(({ waterGains }) => ({ waterGains: new Map([...waterGains, [data.option, data]]) }));
    };
    return () => {
      started.terminate();
      asked.current = '';
    };
  }, []);
  useEffect(() => {
    if (!view || view.faults.length > 0) return undefined;
    // Another option that is shown is no change of the document.
    const text = JSON.stringify({ ...view.raw, view: null, chosen: null });
    if (text === asked.current) return undefined;
    edit.current++;
    asked.current = '';
    useWorkbench.setState({ waterGains: new Map() });
    const message: ToGains = { edit: edit.current, raw: view.raw };
    const timer = setTimeout(() => {
      asked.current = text;
      worker.current?.postMessage(message);
    }, rest);
    return () => clearTimeout(timer);
  }, [view]);
}
