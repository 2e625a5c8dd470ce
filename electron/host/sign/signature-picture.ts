import { openFaces } from '../note/faces.ts';

interface Outline {
  readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[];
}
interface DrawnFont {
  readonly unitsPerEm: number;
  readonly ascent: number;
  layout(text: string): {
    readonly glyphs: readonly { readonly path: Outline; readonly advanceWidth: number }[];
  };
}

/** Space between a seal and the words, in points. */
const gap = 3;

/**
 * Drawing operators that set lines of text as outlines in a box of this size in points: no font needs to be embedded
 * in a file that is finished. Lines are made smaller until they fit. A seal (its sides in any unit) stands before them
 * as the image /Seal: as high as the box, a third of it wide at the most, its sides in their ratio.
 */
export function signaturePicture(
  lines: readonly string[],
  width: number,
  height: number,
  seal: { readonly width: number; readonly height: number } | null,
): string {
  if (seal) {
    const scale = Math.min(width / 3 / seal.width, height / seal.height);
    const [across, up] = [scale * seal.width, scale * seal.height];
    const words = signaturePicture(lines, width - across - gap, height, null);
    const at = [across, 0, 0, up, 0, (height - up) / 2].map((n) => n.toFixed(3)).join(' ');
    return `q ${at} cm /Seal Do Q\nq 1 0 0 1 ${(across + gap).toFixed(3)} 0 cm\n${words}\nQ`;
  }
  const font = openFaces().font('SourceSans') as unknown as DrawnFont;
  const leading = height / lines.length;
  const drawn = lines.map((line, n) => {
    const { glyphs } = font.layout(line);
    const length = glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0);
    const scale = Math.min((0.78 * leading) / font.ascent, width / Math.max(length, 1));
    const baseline = height - (n + 0.85) * leading;
    let x = 0;
    return glyphs.map(({ path, advanceWidth }) => {
      const shape = operatorsOf(path, scale, x * scale, baseline);
      x += advanceWidth;
      return shape;
    });
  });
  return `q 0 g\n${drawn.flat().filter(Boolean).join('\n')}\nQ`;
}

function operatorsOf({ commands }: Outline, scale: number, dx: number, dy: number): string {
  let [penX, penY] = [0, 0];
  const point = (x: number, y: number): string => `${(x * scale + dx).toFixed(3)} ${(y * scale + dy).toFixed(3)}`;
  const parts = commands.map(({ command, args }) => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args;
    const [x, y] = [penX, penY];
    if (args.length >= 2) [penX, penY] = args.slice(-2) as [number, number];
    switch (command) {
      case 'moveTo':
        return `${point(a, b)} m`;
      case 'lineTo':
        return `${point(a, b)} l`;
      case 'bezierCurveTo':
        return `${point(a, b)} ${point(c, d)} ${point(e, f)} c`;
      case 'quadraticCurveTo': {
        // A PDF has cubic curves only: the same curve, its handles two thirds of the way to the one.
        const third = (from: number, to: number): number => from + (2 * (to - from)) / 3;
        return `${point(third(x, a), third(y, b))} ${point(third(c, a), third(d, b))} ${point(c, d)} c`;
      }
      default:
        return 'h';
    }
  });
  return parts.length === 0 ? '' : `${parts.join(' ')} f`;
}
