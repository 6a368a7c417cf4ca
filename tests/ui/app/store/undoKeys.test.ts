// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { keepsItsKeys, stepOfKeys } from '../../../../src/ui/app/store/undoKeys';

describe('keys for undo and redo', () => {
  test.each<[KeyboardEventInit, string | undefined]>([
    [{ key: 'z', ctrlKey: true }, 'undo'],
    [{ key: 'z', metaKey: true }, 'undo'],
    [{ key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
    [{ key: 'y', ctrlKey: true }, 'redo'],
    [{ key: 'z' }, undefined],
    [{ key: 'z', ctrlKey: true, altKey: true }, undefined],
    [{ key: 'a', ctrlKey: true }, undefined],
  ])('%o: %s', (keys, step) => expect(stepOfKeys(new KeyboardEvent('keydown', keys))).toBe(step));
});

describe('the keys stay with', () => {
  function element(html: string): Element {
    document.body.innerHTML = html;
    return document.body.firstElementChild!;
  }

  test.each([
    ['<input type="search">', true],
    ['<textarea></textarea>', true],
    ['<input data-model-field aria-invalid="true">', true],
    ['<input data-model-field>', false],
    ['<input type="checkbox">', false],
    ['<button></button>', false],
  ])('%s: %s', (html, keeps) => expect(keepsItsKeys(element(html))).toBe(keeps));
});
