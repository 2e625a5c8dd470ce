import type { Scene } from './scene.ts';

/** The memory of all buffers of a scene, each once: what can be handed to another thread without a copy. */
export const buffersOf = ({ meshes, bolts, holes }: Scene): ArrayBuffer[] =>
  [...meshes, ...bolts, { holes }].flatMap((solid) =>
    Object.values(solid).flatMap((value) => (ArrayBuffer.isView(value) ? [value.buffer as ArrayBuffer] : [])),
  );
