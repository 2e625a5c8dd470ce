import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';

/** How long the card has to make a new program before it is asked about it, ms. */
const patience = 1000;

/**
 * Asks the card after a while whether it could make the programs that draw the plate. Three would ask at their first use,
 * and the window would stand still until the compiler has answered.
 */
export function Programs({ onBroken }: { readonly onBroken: () => void }) {
  const gl = useThree((state) => state.gl);
  const asked = useRef(0);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  useFrame(() => {
    // a frame is about to be drawn, and may bring new ones
    timer.current ??= setTimeout(() => {
      timer.current = undefined;
      const programs = gl.info.programs ?? [];
      if (programs.length === asked.current) return;
      asked.current = programs.length;
      const context = gl.getContext();
      const isMade = programs.every(({ program }) => context.getProgramParameter(program as WebGLProgram, context.LINK_STATUS)); // prettier-ignore
      if (!isMade && !context.isContextLost()) onBroken();
    }, patience);
  });
  return null;
}
