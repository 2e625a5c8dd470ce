import { create } from 'zustand';
import { firstSettings, type SceneSettings } from '../scene/SceneTools.tsx';

/** How the plate is looked at in the window: what the picture's own tools and a sheet may both choose. */
export const usePicture = create<SceneSettings>(() => firstSettings);

/** A field as the picture's reading. */
export const fieldReading = (id: string): string => `field:${id}`;
