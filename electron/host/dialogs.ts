/** Dialogs of the desktop around a window. Paths stay on this side. Null when the user turns back. */
export interface Dialogs {
  readonly chooseFile: () => Promise<string | null>;
  readonly choosePlace: (name: string, mime: string) => Promise<string | null>;
  readonly showInFolder: (path: string) => Promise<void>;
  readonly print: (bytes: Uint8Array) => Promise<void>;
}
