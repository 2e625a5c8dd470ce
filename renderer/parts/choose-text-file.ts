/** Lets the person choose a file and reads it in the page; null when they turn back. */
export function chooseTextFile(
  accept = '.stillplate,.json',
): Promise<{ readonly name: string; readonly text: string } | null> {
  return new Promise((resolve, reject) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.addEventListener('cancel', () => resolve(null));
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      if (!file) resolve(null);
      else file.text().then((text) => resolve({ name: file.name, text }), reject);
    });
    input.click();
  });
}
