/** A certificate's common name, or all of its name. */
export const nameOf = (subject: string): string => /(?:^|\n)CN=([^\n]+)/.exec(subject)?.[1] ?? subject.replace(/\n/g, ', '); // prettier-ignore
