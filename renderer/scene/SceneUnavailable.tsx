import { sceneTexts as texts } from './scene-texts.ts';

/** In place of the picture where there is no WebGL: what is missing, and how to mend it. */
export function SceneUnavailable() {
  return (
    <div className="scene-unavailable" role="note">
      <p>{texts.noPicture}</p>
      <p>{texts.noPictureMend}</p>
    </div>
  );
}

/** True where the browser can draw the picture; asked once. A canvas of the page is asked: others may say yes too soon. */
export const canDraw = (): boolean => (known ??= document.createElement('canvas').getContext('webgl2') !== null);
let known: boolean | undefined;
