/** Lets the person choose a file and reads its bytes in the page, as they are; null when they turn back. No path enters the page. */
export function chooseFileBytes(accept: string): Promise<{ readonly name: string; readonly bytes: Uint8Array } | null> {
  return new Promise((resolve, reject) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.addEventListener('cancel', () => resolve(null));
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      if (!file) resolve(null);
      else file.arrayBuffer().then((buffer) => resolve({ name: file.name, bytes: new Uint8Array(buffer) }), reject);
    });
    input.click();
  });
}
