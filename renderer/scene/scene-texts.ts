import { texts } from '../texts.ts';

/** The picture's part of the window's texts. */
export const sceneTexts = texts.scene;
