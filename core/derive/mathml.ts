import type { Box } from './box.ts';

/** A box as presentation MathML, one `math` element of display style. */
export const mathml = (box: Box): string =>
  `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${element(box)}</math>`;

function element(box: Box): string {
  switch (box.kind) {
    case 'row':
      return `<mrow>${box.boxes.map(element).join('')}</mrow>`;
    case 'symbol':
      return `<mi mathvariant="italic">${escaped(box.text)}</mi>`;
    case 'text':
      return box.text === '−' ? '<mo form="prefix">−</mo>' : `<mtext>${escaped(box.text)}</mtext>`;
    case 'number':
      return `<mn>${escaped(box.text)}</mn>`;
    case 'operator':
      return `<mo>${escaped(box.text)}</mo>`;
    case 'fraction':
      return `<mfrac>${element(box.over)}${element(box.under)}</mfrac>`;
    case 'root':
      return `<msqrt>${element(box.body)}</msqrt>`;
    case 'script': {
      const name = `m${box.sub ? 'sub' : ''}${box.sup ? 'sup' : ''}`;
      const scripts = [box.sub, box.sup].map((script) => (script ? element(script) : '')).join('');
      return name === 'm' ? element(box.base) : `<${name}>${element(box.base)}${scripts}</${name}>`;
    }
    case 'bracket': {
      const [open, close] = box.shape === 'bar' ? ['|', '|'] : ['(', ')'];
      return `<mrow><mo fence="true">${open}</mo>${element(box.body)}<mo fence="true">${close}</mo></mrow>`;
    }
    case 'cases': {
      const rows = box.rows.map(
        ({ value, when }) => `<mtr><mtd>${element(value)}</mtd><mtd>${element(when)}</mtd></mtr>`,
      );
      return `<mrow><mo fence="true">{</mo><mtable columnalign="left left">${rows.join('')}</mtable></mrow>`;
    }
  }
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
