import type { Json } from '../../core/document/edit.ts';
import type { KnownLayout } from '../state/known-layout.ts';
import { rememberLayout } from '../state/layouts.ts';
import { useSession } from '../state/session-context.ts';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';

const t = texts.tank;

/** Takes what a record was reduced to into the document; says where the one that is there is of other settings. */
export function RecordAcceptance({
  of,
  index,
  entry: { record, result },
  accepted,
  words,
}: {
  of: KnownLayout['of'];
  index: number;
  entry: { readonly record: { readonly layout?: string | undefined }; readonly result?: { readonly key: string } | undefined };
  accepted: Readonly<Record<string, Json>>;
  words: { readonly isOld: string; readonly remove: string };
}) {
  const session = useSession();
  const at = ['tests', of, index] as const;
  const path = [...at, 'result'] as const;
  const reading = useField([...at, 'reading']).raw;
  const isCurrent = result !== undefined && result.key === accepted['key'];
  const accept = () => {
    rememberLayout(of, record.layout, reading);
    void session.edit({ kind: 'setField', option: null, path, value: accepted });
  };
  return (
    <div className="tank-accept" role="group" aria-label={t.acceptance}>
      <span className={result && !isCurrent ? 'fault' : 'quiet'}>
        {isCurrent ? t.isAccepted : result ? words.isOld : t.notAccepted}
      </span>
      {!isCurrent && (
        <button type="button" onClick={accept}>
          {t.accept}
        </button>
      )}
      {result && (
        <button type="button" className="plain small" onClick={() => void session.edit({ kind: 'clearField', option: null, path })}>
          {t.takeBack}
        </button>
      )}
      <button type="button" className="plain small" onClick={() => void session.edit({ kind: 'clearField', option: null, path: at })}>
        {words.remove}
      </button>
    </div>
  );
} // prettier-ignore
