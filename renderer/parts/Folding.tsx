import { useEffect, type ReactNode } from 'react';
import { create } from 'zustand';
import { useSettings } from '../state/settings.ts';
import './folding.css';

/** What can be folded on the sheet that is shown, each with its usual state. */
const useShown = create<{ readonly parts: readonly Part[] }>(() => ({ parts: [] }));
interface Part {
  readonly title: string;
  readonly isUsuallyFolded: boolean;
}

/** A part of a sheet that folds away under its title, and stays as it was left, on this machine. */
export function Folding({
  title,
  level = 3,
  isUsuallyFolded = false,
  className = '',
  children,
}: {
  title: string;
  level?: 2 | 3;
  isUsuallyFolded?: boolean;
  className?: string;
  children: ReactNode;
}) {
  const isFolded = useSettings(({ turned }) => turned.includes(title) !== isUsuallyFolded);
  useEffect(() => {
    const part = { title, isUsuallyFolded };
    useShown.setState(({ parts }) => ({ parts: [...parts, part] }));
    return () => useShown.setState(({ parts }) => ({ parts: parts.filter((other) => other !== part) }));
  }, [title, isUsuallyFolded]);
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <details
      className={`folding ${className}`}
      open={!isFolded}
      onToggle={({ currentTarget, target }) => {
        if (target === currentTarget) fold([{ title, isUsuallyFolded }], !currentTarget.open);
      }}
    >
      <summary>
        <Title>{title}</Title>
      </summary>
      {children}
    </details>
  );
}

/** Folds parts away, or opens them. */
function fold(parts: readonly Part[], isFolded: boolean): void {
  const { turned } = useSettings.getState();
  const titles = new Set(parts.map(({ title }) => title));
  const now = [
    ...turned.filter((title) => !titles.has(title)),
    ...[...titles].filter((title) => parts.find((part) => part.title === title)!.isUsuallyFolded !== isFolded),
  ];
  if (now.length !== turned.length || now.some((title) => !turned.includes(title)))
    useSettings.setState({ turned: now });
}

/** All parts of the sheet at once: folded away they are its table of contents. Null where there is little to fold. */
export function useFoldAll(): { readonly isFolded: boolean; readonly turn: () => void } | null {
  const { parts } = useShown();
  const turned = useSettings((settings) => settings.turned);
  if (parts.length < 4) return null;
  const isFolded = parts.every(({ title, isUsuallyFolded }) => turned.includes(title) !== isUsuallyFolded);
  return { isFolded, turn: () => fold(parts, !isFolded) };
}
