import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import type { OrthographicCamera } from 'three';
import { axesOf } from './camera.ts';
import type { ViewStore } from './view-store.ts';

/** Keeps three's camera at the view, and asks for a picture when it moved. `reach`: how far anything lies from the target, m. */
export function Rig({ store, reach }: { readonly store: ViewStore; readonly reach: number }) {
  const camera = useThree((state) => state.camera) as OrthographicCamera;
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    const follow = (): void => {
      const view = store.view();
      const { up, eye } = axesOf(view);
      const { target: t } = view;
      const { width, height } = store.size();
      camera.position.set(t[0] + reach * eye[0], t[1] + reach * eye[1], t[2] + reach * eye[2]);
      camera.up.set(up[0], up[1], up[2]);
      camera.lookAt(t[0], t[1], t[2]);
      camera.left = -width / 2;
      camera.right = width / 2;
      camera.top = height / 2;
      camera.bottom = -height / 2;
      camera.near = 0;
      camera.far = 2 * reach;
      camera.zoom = view.scale;
      camera.updateProjectionMatrix();
      camera.updateMatrixWorld();
      invalidate();
    };
    follow();
    return store.subscribe(follow);
  }, [camera, invalidate, store, reach]);
  return null;
}
