import { useThree } from '@react-three/fiber';
import { useEffect, useState, type ReactNode } from 'react';
import type { Camera, Scene, WebGLRenderer } from 'three';
import { everyKind } from './every-kind.ts';
import type { Palette } from './palette.ts';

/**
 * Has the card make all programs that draw the plate before anything is drawn, and keeps them: three would ask for each
 * at its first use, and the window would stand still until the compiler has answered. `onBroken`: whether the card could not make one.
 */
export function Programs({
  palette,
  onBroken,
  children,
}: {
  readonly palette: Palette;
  readonly onBroken: (isBroken: boolean) => void;
  readonly children: ReactNode;
}) {
  const gl = useThree((state) => state.gl);
  const camera = useThree((state) => state.camera);
  const [kinds] = useState(() => everyKind(palette));
  const [areMade, setMade] = useState(false);
  useEffect(() => {
    let isOver = false;
    const make = (): void =>
      void madePrograms(gl, camera, kinds).then((isRight) => {
        if (isOver) return;
        onBroken(!isRight);
        setMade(true);
      });
    make();
    // a card that was lost has lost its programs too
    const canvas = gl.domElement;
    canvas.addEventListener('webglcontextrestored', make);
    return () => {
      isOver = true;
      canvas.removeEventListener('webglcontextrestored', make);
    };
  }, [gl, camera, kinds, onBroken]);
  return areMade ? children : null;
}

/** Whether the card could make them all. */
async function madePrograms(gl: WebGLRenderer, camera: Camera, kinds: Scene): Promise<boolean> {
  await gl.compileAsync(kinds, camera);
  const context = gl.getContext();
  let areRight = true;
  for (const made of gl.info.programs ?? []) {
    // The card answers each question when all before it is done: one at a time, the window free in between.
    await new Promise((goOn) => setTimeout(goOn));
    if (context.isContextLost()) return true;
    areRight &&= Boolean(context.getProgramParameter(made.program as WebGLProgram, context.LINK_STATUS));
    made.getUniforms();
    made.getAttributes();
  }
  return areRight;
}
