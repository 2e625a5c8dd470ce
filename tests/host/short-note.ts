import type { Note } from '../../core/note/note.ts';

/** A note of one page with the boxes in which it is signed. */
export const shortNote: Note = {
  title: 'Short', stamp: 'ISSUED', paper: 'A4', titleBlock: [], documentHash: 'ab'.repeat(32), programVersion: '0.1.0', date: '2026-03-14', language: 'en-GB', attachments: [],
  sections: [{ title: 'Sign-off', blocks: [{ kind: 'signOff', roles: ['Author', 'Checker', 'Licensed engineer'], fields: ['Name', 'Date', 'Signature'] }] }],
}; // prettier-ignore
