import { useState } from 'react';
import { notify } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** Copies something to the clipboard and says so in its own words. `what` is read when it is pressed. */
export function CopyButton({
  label,
  what,
}: {
  label: string;
  what: () => Promise<ClipboardItem> | ClipboardItem | string;
}) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    const item = await what();
    try {
      await (typeof item === 'string' ? navigator.clipboard.writeText(item) : navigator.clipboard.write([item]));
      setCopied(true);
      setTimeout(() => setCopied(false), 2500);
    } catch (error) {
      notify('loud', { what: texts.copy.refused(String(error)), mend: texts.copy.refusedMend });
    }
  };
  return (
    <button type="button" className="link small copy" onClick={() => void copy()}>
      <span role="status">{copied ? texts.copy.done : label}</span>
    </button>
  );
}
