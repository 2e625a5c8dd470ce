import { useRef, useState } from 'react';
import { none } from '../state/none.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './bay-plan.css';

/** The bays in plan, to choose by clicking, dragging across, or with the keyboard (arrows move, space chooses). */
export function BayPlan({
  chosen,
  onChoose,
}: {
  chosen: readonly string[];
  onChoose: (bays: readonly string[]) => void;
}) {
  const bays = useWorkbench((state) => state.result?.bays ?? none);
  const selection = useWorkbench((state) => state.selection);
  const frame = useRef<SVGSVGElement>(null);
  const [drag, setDrag] = useState<{ from: string; to: string; adding: boolean } | null>(null);
  if (bays.length === 0) return <p className="quiet">{texts.panels.noBays}</p>;
  const x0 = Math.min(...bays.map(({ opening }) => opening.x0));
  const x1 = Math.max(...bays.map(({ opening }) => opening.x1));
  const y0 = Math.min(...bays.map(({ opening }) => opening.y0));
  const y1 = Math.max(...bays.map(({ opening }) => opening.y1));
  const margin = 0.06 * Math.max(x1 - x0, y1 - y0);
  const spanned = drag ? between(bays, drag.from, drag.to) : [];
  const isChosen = (id: string) => (spanned.includes(id) ? drag!.adding : chosen.includes(id));

  const finish = () => {
    if (!drag) return;
    const rest = chosen.filter((id) => !spanned.includes(id));
    onChoose(drag.adding ? [...rest, ...spanned] : rest);
    setDrag(null);
  };
  const move = (from: string, dx: number, dy: number) => {
    const next = neighbour(bays, from, dx, dy);
    if (next) frame.current?.querySelector<SVGElement>(`[data-bay="${CSS.escape(next)}"]`)?.focus();
  };

  return (
    <svg
      ref={frame}
      className="bay-plan"
      viewBox={`${x0 - margin} ${-y1 - margin} ${x1 - x0 + 2 * margin} ${y1 - y0 + 2 * margin}`}
      role="group"
      aria-label={texts.panels.planOfBays}
      onPointerUp={finish}
      onPointerLeave={() => setDrag(null)}
    >
      {bays.map(({ id, opening, design }, n) => {
        const size = Math.min(opening.x1 - opening.x0, opening.y1 - opening.y0) * 0.3;
        return (
          <g
            key={id}
            data-bay={id}
            role="checkbox"
            aria-checked={isChosen(id)}
            aria-label={`${id}: ${design ?? texts.panels.open}`}
            tabIndex={n === 0 ? 0 : -1}
            className={`bay${design ? ' closed' : ''}${isChosen(id) ? ' chosen' : ''}${selection === id ? ' selected' : ''}`}
            onPointerDown={(event) => {
              (event.target as Element).releasePointerCapture?.(event.pointerId);
              setDrag({ from: id, to: id, adding: !chosen.includes(id) });
            }}
            onPointerEnter={() => drag && setDrag({ ...drag, to: id })}
            onKeyDown={(event) => {
              const way = ways[event.key];
              if (way) move(id, ...way);
              else if (event.key === ' ' || event.key === 'Enter')
                onChoose(chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id]);
              else return;
              event.preventDefault();
            }}
          >
            <rect x={opening.x0} y={-opening.y1} width={opening.x1 - opening.x0} height={opening.y1 - opening.y0} />
            <text x={(opening.x0 + opening.x1) / 2} y={-(opening.y0 + opening.y1) / 2 + size * 0.35} fontSize={size}>
              {id}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

type Bays = readonly { readonly id: string; readonly opening: Opening }[];
interface Opening {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
const ways: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const middle = ({ x0, x1, y0, y1 }: Opening) => [(x0 + x1) / 2, (y0 + y1) / 2] as const;

/** Bays inside the rectangle that two bays span. */
function between(bays: Bays, from: string, to: string): readonly string[] {
  const [a, b] = [from, to].map((id) => middle(bays.find((bay) => bay.id === id)!.opening)) as [Point, Point];
  return bays
    .filter(({ opening }) => {
      const [x, y] = middle(opening);
      const within = (v: number, p: number, q: number) => v >= Math.min(p, q) - 1e-9 && v <= Math.max(p, q) + 1e-9;
      return within(x, a[0], b[0]) && within(y, a[1], b[1]);
    })
    .map(({ id }) => id);
}
type Point = readonly [number, number];

/** The nearest bay in a direction. */
function neighbour(bays: Bays, from: string, dx: number, dy: number): string | undefined {
  const [x, y] = middle(bays.find(({ id }) => id === from)!.opening);
  return bays
    .map(({ id, opening }) => {
      const [u, v] = middle(opening);
      const ahead = (u - x) * dx + (v - y) * dy;
      return { id, ahead, far: Math.hypot(u - x, v - y) + 3 * Math.abs((u - x) * dy) + 3 * Math.abs((v - y) * dx) };
    })
    .filter(({ ahead }) => ahead > 1e-9)
    .sort((p, q) => p.far - q.far)[0]?.id;
}
