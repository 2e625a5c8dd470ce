import { useWorkbench } from './workbench.ts';
import { create } from 'zustand';

const useShown = create<{ readonly design: string | null }>(() => ({ design: null }));
const none: readonly string[] = [];

/** Names of the panel designs under the shown option, and the one whose fields are shown: that of the selected bay at first. */
export function useDesigns(): {
  readonly names: readonly string[];
  readonly shown: string | null;
  readonly show: (design: string) => void;
} {
  const designs = useWorkbench((state) => state.document?.laid['designs']);
  const used = useWorkbench(({ result, selection }) => {
    const bays = result?.bays ?? [];
    const bay = bays.find(({ id }) => id === selection) ?? bays.find(({ design }) => design !== null);
    return bay?.design ?? null;
  });
  const chosen = useShown((state) => state.design);
  const names = typeof designs === 'object' && designs !== null ? Object.keys(designs) : none;
  const shown =
    chosen !== null && names.includes(chosen)
      ? chosen
      : used !== null && names.includes(used)
        ? used
        : (names[0] ?? null);
  return { names, shown, show: (design) => useShown.setState({ design }) };
}
