import { useSyncExternalStore } from 'react';
import type { View } from './camera.ts';
import type { ViewStore } from './view-store.ts';

/** The view as it is now: for what is drawn over the picture and follows it. */
export const useView = ({ subscribe, view }: ViewStore): View => useSyncExternalStore(subscribe, view);
