import { expect, it } from 'vitest';
import { functions } from '../../src/formula/functions';
import { unknownFunction } from '../../src/formula/unknownFunction';

it('tells a cell from a function', () => {
  expect(unknownFunction('wage', true)).toMatchObject({
    code: 'function-name',
    message: 'not a function: wage. It is a cell; write * before the bracket to multiply.',
    where: { text: 'wage' },
  });
});

it('names the nearest function', () => {
  expect(unknownFunction('flor', false).message).toBe('function not known: flor. Did you mean floor?');
});

it('names all functions where none is near', () => {
  const { message } = unknownFunction('zzzzzzzzzzzz', false);
  expect(message).toContain(`Known are ${[...functions.keys()].join(', ')}.`);
});
