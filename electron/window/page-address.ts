/** The address of our page: a scheme of our own, so that no file of the disk can be named. */
export const scheme = 'stillplate';
export const pageAddress = `${scheme}://window/index.html`;

/** Whether an address is one of our page's own files. */
export function isOurs(address: string): boolean {
  try {
    const { protocol, host } = new URL(address);
    return protocol === `${scheme}:` && host === 'window';
  } catch {
    return false;
  }
}
