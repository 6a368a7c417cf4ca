// @vitest-environment jsdom
import { expect, test } from 'vitest';
import { titleParts } from '../../../../src/ui/kit/sections/TitleHeading';

test.each([
  ['Does it pay? A farm', ['Does it pay?', 'A farm']],
  ['A farm', ['A farm', '']],
  ['Does it pay?', ['Does it pay?', '']],
])('%s', (title, parts) => expect(titleParts(title)).toEqual(parts));
