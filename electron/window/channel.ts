/** Names of the messages between a page and the main process. */
export const channel = {
  call: 'stillplate-call',
  event: 'stillplate-event',
  listening: 'stillplate-listening',
} as const;
