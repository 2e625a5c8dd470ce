import type { Source } from '../source.ts';

/** The book in which a rule of AISC 360 was read: it prints the edition of 2005, whose numbers for hollow sections the
 *  edition of 2016 keeps (that it keeps them: from memory). */
export const handbook = (articles: string): Source => ({
  document: "Brockenbrough and Merritt, Structural Steel Designer's Handbook",
  edition: '4th',
  clause: `${articles}, where AISC 360 [2005] was read; that the edition of 2016 keeps it is from memory`,
  safety: 'allowable stress',
});

/** The limits of walls were read apart from that book. */
export const wallLimitsRead: Source = {
  document: 'AISC 360',
  edition: '2005',
  clause: 'Table B4.1, read in an extract of that edition; that the edition of 2016 keeps it is from memory',
  safety: 'allowable stress',
};
