import { createElement, type ReactNode } from 'react';
import type { Box } from '../../core/derive/box.ts';
import './formula.css';

/** A formula as presentation MathML: the same tree that the note sets. `label`: the formula in one line, for copying and listening. */
export function Formula({ boxes, label }: { boxes: readonly (Box | string)[]; label?: string }) {
  return createElement(
    'math',
    { xmlns: 'http://www.w3.org/1998/Math/MathML', 'aria-label': label },
    createElement(
      'mrow',
      null,
      ...boxes.map((box) => (typeof box === 'string' ? createElement('mo', null, box) : element(box))),
    ),
  );
}

function element(box: Box): ReactNode {
  switch (box.kind) {
    case 'row':
      return createElement('mrow', null, ...box.boxes.map(element));
    case 'symbol':
      return createElement('mi', { mathvariant: 'italic' }, box.text);
    case 'text':
      return box.text === '−' ? createElement('mo', { form: 'prefix' }, '−') : createElement('mtext', null, box.text);
    case 'number':
      return createElement('mn', null, box.text);
    case 'operator':
      return createElement('mo', null, box.text);
    case 'fraction':
      return createElement('mfrac', null, element(box.over), element(box.under));
    case 'root':
      return createElement('msqrt', null, element(box.body));
    case 'script':
      if (box.sub && box.sup)
        return createElement('msubsup', null, element(box.base), element(box.sub), element(box.sup));
      if (box.sub) return createElement('msub', null, element(box.base), element(box.sub));
      return box.sup ? createElement('msup', null, element(box.base), element(box.sup)) : element(box.base);
    case 'bracket': {
      const [open, close] = box.shape === 'bar' ? ['|', '|'] : ['(', ')'];
      return createElement(
        'mrow',
        null,
        createElement('mo', { fence: 'true' }, open),
        element(box.body),
        createElement('mo', { fence: 'true' }, close),
      );
    }
    case 'cases':
      return createElement(
        'mrow',
        null,
        createElement('mo', { fence: 'true' }, '{'),
        createElement(
          'mtable',
          { columnalign: 'left left' },
          ...box.rows.map(({ value, when }) =>
            createElement(
              'mtr',
              null,
              createElement('mtd', null, element(value)),
              createElement('mtd', null, element(when)),
            ),
          ),
        ),
      );
  }
}
