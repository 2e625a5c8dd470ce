import type { ReactNode } from 'react';
import { Folding } from './Folding.tsx';

/** Fields that belong together, under their name. */
export function FieldGroup({ title, children }: { title: string; children: ReactNode }) {
  return (
    <Folding title={title} className="group">
      {children}
    </Folding>
  );
}
