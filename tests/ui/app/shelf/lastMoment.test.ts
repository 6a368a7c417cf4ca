import { describe, expect, it } from 'vitest';
import { carriedOn, createLastMoments, leftWhole } from '../../../../src/ui/app/shelf/lastMoment';
import type { PageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import { fileOf, workOf } from './given';

/** The page's memory, which holds at most some characters of each text. */
function memoryOf(room = Infinity) {
  const texts = new Map<string, string>();
  const memory = {
    lastMoment: (id: string) => texts.get(id),
    setLastMoment: (id: string, text: string | undefined) => {
      if (text === undefined) return texts.delete(id);
      if (text.length > room) return false;
      texts.set(id, text);
      return true;
    },
  } as unknown as PageMemory;
  return { texts, memory };
}

describe('a model whose page is left before the database confirmed it', () => {
  it('is found again as a whole, byte by byte', () => {
    const { texts, memory } = memoryOf();
    createLastMoments(memory).put(workOf([[3, 'formula', '15']]), fileOf());
    const left = leftWhole('one', texts.get('one'));
    expect(left?.work).toMatchObject(workOf([[3, 'formula', '15']]));
    expect(left?.file).toEqual(fileOf());
  });

  it('goes on from its work alone where the database has its file', () => {
    const { texts, memory } = memoryOf();
    createLastMoments(memory).put(workOf([[3, 'formula', '15']], { at: 9 }));
    expect(leftWhole('one', texts.get('one'))).toBeUndefined();
    expect(carriedOn(workOf(), texts.get('one')).changes).toEqual([[3, 'formula', '15']]);
  });

  it('keeps its work where its file is too large for the memory', () => {
    const room = JSON.stringify(workOf()).length;
    const { texts, memory } = memoryOf(room);
    createLastMoments(memory).put(workOf(), fileOf());
    expect(texts.get('one')).toBe(JSON.stringify(workOf()));
  });

  it.each([
    ['nothing', undefined],
    ['no record', '{'],
    ['another model', JSON.stringify({ ...workOf([], { id: 'two' }), file: { ...fileOf('two'), bytes: [1] } })],
    ['a file without bytes', JSON.stringify({ ...workOf(), file: { ...fileOf(), bytes: 'x' } })],
    ['a file without a name', JSON.stringify({ ...workOf(), file: { id: 'one', bytes: [1] } })],
  ])('is none where the memory holds %s', (_what, text) => {
    expect(leftWhole('one', text)).toBeUndefined();
  });
});
