import { KeptRows } from './KeptRows.tsx';
import { LookUp } from './LookUp.tsx';
import { OwnRows } from './OwnRows.tsx';

/** Materials, sections, bolts and what else comes from the catalogue: the plate's own rows, the built-in ones, and those kept for other plates. */
export function CatalogueSheet() {
  return (
    <>
      <OwnRows />
      <LookUp />
      <KeptRows />
    </>
  );
}
