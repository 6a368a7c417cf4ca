import { expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { fieldColumns } from '../../../src/present/timing/columns';
import { typedField } from '../../../src/present/timing/typedField';

const [british, spanish] = ['en-GB', 'es-ES'].map((locale) => createFormat(locale));

function typed(text: string, name: string, format = british, standing = ''): string {
  const read = typedField(
    text,
    fieldColumns.find((column) => column.name === name)!,
    standing,
    format!,
  );
  return 'text' in read ? read.text : `? ${read.doubt}`;
}

it('a time that could be read in two ways is asked about, unless the field has shown what the mark means', () => {
  expect(typed('1,234', 'seconds')).toMatch(/^\? In seconds, read two ways: 1,234\./);
  expect(typed('1.234', 'seconds', spanish)).toMatch(/^\? In seconds, read two ways: 1\.234\./);
  expect(typed('1,234', 'seconds', british, '1200')).toBe('1234');
  expect(typed('12,5', 'seconds', spanish)).toBe('12.5');
});

it('in a count the mark of thousands has one meaning', () => {
  expect(typed('1.000', 'plants', spanish)).toBe('1000');
  expect(typed('1,000', 'lost')).toBe('1000');
  expect(typed('1.000', 'plants')).toMatch(/^\? In plants, read two ways/);
});

it('what is no number stays as it is typed, and so does a text', () => {
  expect(typed('a dozen', 'plants')).toBe('a dozen');
  expect(typed('', 'seconds')).toBe('');
  expect(typed('1,234', 'note')).toBe('1,234');
});
