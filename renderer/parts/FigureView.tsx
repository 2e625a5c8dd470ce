import { memo } from 'react';
import type { Figure, Shape } from '../../core/note/note.ts';
import './figure.css';

/** Points on paper to pixels on the screen. */
const pixels = 4 / 3;

/**
 * A figure of the note, drawn in the window: the same shapes. `width`: of the drawing in pixels, for which texts keep
 * their size; `plain` leaves labels and dimensions out, for small pictures.
 */
export const FigureView = memo(function FigureView({
  figure,
  width,
  plain = false,
}: {
  figure: Figure;
  width: number;
  plain?: boolean;
}) {
  const around = plain ? 0 : reach(figure);
  const scale = figure.box.width / (width - 2 * around);
  const box = {
    x: figure.box.x - around * scale,
    y: figure.box.y - around * scale,
    width: figure.box.width + 2 * around * scale,
    height: figure.box.height + 2 * around * scale,
  };
  const shapes = plain ? plainShapes(figure.shapes, scale) : figure.shapes;
  return (
    <svg
      className="figure"
      viewBox={`${box.x} ${-box.y - box.height} ${box.width} ${box.height}`}
      role="img"
      aria-label={figure.alt}
      preserveAspectRatio="xMidYMid meet"
    >
      {shapes.map((shape, n) => (
        <Drawn key={n} shape={shape} scale={scale} middle={[box.x + box.width / 2, box.y + box.height / 2]} />
      ))}
    </svg>
  );
});

/**
 * What a small picture shows: neither labels nor dimensions nor circles that would be under two pixels wide; paths of
 * one pen and fill in a row become one, so that eight pictures of a plate with a thousand bolts weigh little.
 */
function plainShapes(shapes: readonly Shape[], scale: number): readonly Shape[] {
  const kept: Shape[] = [];
  for (const shape of shapes) {
    if (shape.kind === 'circle' && shape.radius > scale) kept.push(shape);
    if (shape.kind !== 'path') continue;
    const last = kept.at(-1);
    const joins =
      last?.kind === 'path' && last.pen === shape.pen && last.fill === shape.fill && last.closed === shape.closed;
    // Filled rings that lie on each other would cancel out: only what is apart or has no fill is joined.
    if (joins && (shape.fill ?? 'none') === 'none')
      kept[kept.length - 1] = { ...last, rings: [...last.rings, ...shape.rings] };
    else kept.push(shape);
  }
  return kept;
}

/** Pixels that dimension lines and their numbers stand off the figure's box, at most. */
function reach({ shapes }: Figure): number {
  const off = shapes.flatMap((shape) => (shape.kind === 'dimension' ? [Math.abs(shape.offset)] : []));
  return off.length === 0 ? 0 : (Math.max(...off) + 10) * pixels;
}

type At = readonly [number, number];

function Drawn({ shape, scale, middle }: { shape: Shape; scale: number; middle: At }) {
  switch (shape.kind) {
    case 'path':
      return (
        <path
          className={`pen-${shape.pen} fill-${shape.fill ?? 'none'}`}
          d={shape.rings
            .map((ring) => `M${ring.map(([x, y]) => `${x} ${-y}`).join('L')}${shape.closed ? 'Z' : ''}`)
            .join('')}
        />
      );
    case 'circle':
      return (
        <circle
          className={`pen-${shape.pen} fill-${shape.fill ?? 'none'}`}
          cx={shape.at[0]}
          cy={-shape.at[1]}
          r={shape.radius}
        />
      );
    case 'label':
      return (
        <text
          x={shape.at[0]}
          y={-shape.at[1]}
          fontSize={shape.size * pixels * scale}
          textAnchor={shape.anchor}
          transform={shape.turn ? `rotate(${-shape.turn} ${shape.at[0]} ${-shape.at[1]})` : undefined}
        >
          {shape.text}
        </text>
      );
    case 'arrow':
      return <Arrow from={shape.from} to={shape.to} pen={shape.pen} head={6 * pixels * scale} />;
    case 'dimension':
      return <Dimension {...shape} scale={scale} middle={middle} />;
  }
}

function Arrow({ from, to, pen, head }: { from: At; to: At; pen: string; head: number }) {
  const along = unit(from, to);
  const back: At = [to[0] - along[0] * head, to[1] - along[1] * head];
  const side: At = [(-along[1] * head) / 3, (along[0] * head) / 3];
  const corner = (sign: number) => `${back[0] + sign * side[0]} ${-(back[1] + sign * side[1])}`;
  return (
    <g className={`pen-${pen}`}>
      <path className={`pen-${pen} fill-none`} d={`M${from[0]} ${-from[1]}L${back[0]} ${-back[1]}`} />
      <path className={`head-${pen}`} d={`M${to[0]} ${-to[1]}L${corner(1)}L${corner(-1)}Z`} />
    </g>
  );
}

/** A dimension line stands off its two points, away from the middle of the figure (towards it where the offset is negative). */
function Dimension({
  from,
  to,
  offset,
  text,
  scale,
  middle,
}: {
  from: At;
  to: At;
  offset: number;
  text: string;
  scale: number;
  middle: At;
}) {
  const along = unit(from, to);
  const across: At = [-along[1], along[0]];
  const half: At = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const outward = (half[0] - middle[0]) * across[0] + (half[1] - middle[1]) * across[1] >= 0 ? 1 : -1;
  const off = offset * pixels * scale * outward;
  const moved = ([x, y]: At): At => [x + across[0] * off, y + across[1] * off];
  const [a, b, m] = [moved(from), moved(to), moved(half)];
  const size = 7 * pixels * scale;
  const upright = Math.abs(along[1]) > Math.abs(along[0]);
  return (
    <g>
      <path
        className="pen-thin fill-none"
        d={`M${from[0]} ${-from[1]}L${a[0]} ${-a[1]}M${to[0]} ${-to[1]}L${b[0]} ${-b[1]}`}
      />
      <Arrow from={m} to={a} pen="thin" head={size * 0.8} />
      <Arrow from={m} to={b} pen="thin" head={size * 0.8} />
      <text
        className="on-paper"
        x={m[0]}
        y={-m[1] - size * 0.25}
        fontSize={size}
        textAnchor="middle"
        transform={upright ? `rotate(-90 ${m[0]} ${-m[1]})` : undefined}
      >
        {text}
      </text>
    </g>
  );
}

function unit([x0, y0]: At, [x1, y1]: At): At {
  const length = Math.hypot(x1 - x0, y1 - y0);
  return length === 0 ? [1, 0] : [(x1 - x0) / length, (y1 - y0) / length];
}
