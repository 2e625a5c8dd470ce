import type { Scene } from './scene.ts';

/** The memory of all buffers of a scene, each once: what can be handed to another thread without a copy. */
export const buffersOf = ({ meshes, bolts }: Scene): ArrayBuffer[] =>
  [...meshes, ...bolts].flatMap((solid) =>
    Object.values(solid).flatMap((value) => (ArrayBuffer.isView(value) ? [value.buffer as ArrayBuffer] : [])),
  );
