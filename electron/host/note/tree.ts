type Pdf = PDFKit.PDFDocument;

/** A node of the structure that a screen reader follows. */
export interface Branch {
  /** A new last child. */
  branch(
    type: string,
    options?: { alt?: string; title?: string; scope?: 'Column' | 'Row'; bbox?: [number, number, number, number] },
  ): Branch;
  /** What is drawn here belongs to this node. May be called again, also on another page. */
  mark(draw: () => void): void;
  end(): void;
}

interface StructureElement {
  add(child: StructureElement | (() => void)): StructureElement;
  end(): void;
}

/** Opens the structure tree of a document that has a page. */
export function openTree(pdf: Pdf): Branch {
  const open = pdf as unknown as {
    struct(type: string, options?: object): StructureElement;
    addStructure(element: StructureElement): void;
  };
  const root = open.struct('Document');
  open.addStructure(root);
  const branchOf = (element: StructureElement): Branch => ({
    branch(type, options) {
      const child = open.struct(type, options);
      element.add(child);
      return branchOf(child);
    },
    mark: (draw) => void element.add(draw),
    end: () => element.end(),
  });
  return branchOf(root);
}
