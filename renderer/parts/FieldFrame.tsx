import { useId, type ReactNode } from 'react';
import type { RefusalText } from '../../core/refusal.ts';
import { texts } from '../texts.ts';
import './Fields.css';

/** What the frame hands to the control inside it. */
export interface ControlProps {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean | undefined;
}

/** A label, a control, its SI value, its fault and a sentence of help: every field of the window stands in one. */
export function FieldFrame({
  label,
  help,
  si,
  fault,
  differs = false,
  onReset,
  children,
}: {
  label: string;
  help?: string | undefined;
  si?: string | undefined;
  fault?: RefusalText | null;
  differs?: boolean;
  /** Takes the option's difference back. */
  onReset?: (() => void) | undefined;
  children: (control: ControlProps) => ReactNode;
}) {
  const id = useId();
  const describedBy = [fault ? `${id}-fault` : '', help ? `${id}-help` : ''].filter(Boolean).join(' ') || undefined;
  return (
    <div className={`field${fault ? ' wrong' : ''}${differs ? ' differs' : ''}`}>
      <label htmlFor={id}>{label}</label>
      <div className="entry">
        {children({ id, 'aria-describedby': describedBy, 'aria-invalid': fault ? true : undefined })}
        {si && <span className="si">{si}</span>}
        {differs && onReset && (
          <button type="button" className="link small" onClick={onReset} title={texts.field.resetHelp}>
            {texts.field.reset}
          </button>
        )}
      </div>
      {fault && (
        <p className="fault" id={`${id}-fault`}>
          {fault.what}. {fault.mend}
        </p>
      )}
      {help && (
        <p className="help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}
