import { useEffect } from 'react';
import { said } from './said.ts';
import { useSession } from './session-context.ts';
import { hearForces, startSolver } from './solver.ts';
import { useWorkbench } from './workbench.ts';

/** While the document has its checks take forces from the whole plate, each state of it is solved and told to the engine. */
export function useSolvedForces(): void {
  const { engine } = useSession();
  const asks = useWorkbench(({ document }) => document?.read?.forces?.from === 'hand and solver');
  useEffect(() => {
    if (!asks) return undefined;
    const stop = hearForces(({ option, forces }) => void said(async () => void (await engine.ask('solved', { option, forces })))); // prettier-ignore
    startSolver();
    return stop;
  }, [asks, engine]);
}
