import { create } from 'zustand';
import type { Host } from '../../core/host/host.ts';
import { readLayouts, type KnownLayout } from './known-layout.ts';

/** What a person has set for this window on this machine, whatever document is open. */
export interface Settings {
  /** Size of text against the usual one. */
  readonly textScale: number;
  readonly theme: 'system' | 'light' | 'dark';
  /** How files of readings were read before. */
  readonly layouts: readonly KnownLayout[];
  /** Titles of the parts of sheets that are folded away, or open, against what is usual. */
  readonly turned: readonly string[];
}

export const smallestText = 0.85;
export const largestText = 1.6;
const usual: Settings = { textScale: 1, theme: 'system', layouts: [], turned: [] };
const mostTurned = 400;
const themes: readonly string[] = ['system', 'light', 'dark'] satisfies readonly Settings['theme'][];

export const useSettings = create<Settings>(() => usual);

/** Takes the settings that were kept, applies them, and from then on keeps each change. Without a store they hold for this page only: the start page says that there is none. */
export async function openSettings(host: Host): Promise<void> {
  const answer = await host.readSettings({});
  if (answer.ok) useSettings.setState(readSettings(answer.value.text));
  apply(useSettings.getState());
  let keeping: ReturnType<typeof setTimeout> | undefined;
  useSettings.subscribe((settings) => {
    apply(settings);
    clearTimeout(keeping);
    keeping = setTimeout(() => void host.keepSettings({ text: JSON.stringify(settings) }), 300);
  });
}

/** Settings of a kept text. What is not there, or is not understood, is as usual: nothing of a document is in it. */
export function readSettings(text: string): Settings {
  let kept: Record<string, unknown>;
  try {
    const parsed: unknown = JSON.parse(text === '' ? '{}' : text);
    kept = typeof parsed === 'object' && parsed !== null ? (parsed as Record<string, unknown>) : {};
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return usual;
  }
  const { textScale, theme, layouts, turned } = kept;
  return {
    textScale:
      typeof textScale === 'number' && textScale >= smallestText && textScale <= largestText
        ? textScale
        : usual.textScale,
    layouts: readLayouts(layouts),
    turned: Array.isArray(turned) ? turned.filter((title) => typeof title === 'string').slice(0, mostTurned) : [],
    theme: typeof theme === 'string' && themes.includes(theme) ? (theme as Settings['theme']) : usual.theme,
  };
}

const dark = '(prefers-color-scheme: dark)';
/** Rules that hold in the dark, found once: a choice rewrites their condition. */
let rules: readonly CSSMediaRule[] | null = null;

function apply({ textScale, theme }: Settings): void {
  const root = document.documentElement;
  root.style.setProperty('--text-scale', String(textScale));
  rules ??= [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .filter((rule): rule is CSSMediaRule => rule instanceof CSSMediaRule && rule.conditionText.includes('dark'));
  for (const { media } of rules) media.mediaText = theme === 'system' ? dark : theme === 'dark' ? 'all' : 'not all';
  // The picture reads its colours anew when this changes.
  root.dataset['theme'] = theme;
}
