import type { ReactNode } from 'react';
import './fold.css';

/** Fields that are rarely all looked at: folded away under their name until opened. */
export function Fold({ title, children }: { title: string; children: ReactNode }) {
  return (
    <details className="fold">
      <summary>{title}</summary>
      {children}
    </details>
  );
}
