import { expect, test } from 'vitest';
import { saveStateText, type SaveState } from '../../../src/present/page/saveState';

const at = new Date(2031, 2, 9, 16, 30);

test.each<[string, SaveState, string]>([
  ['kept says when', { state: 'kept', at }, 'Kept on this machine at 16:30'],
  ['on its way to the disk is not called kept', { state: 'waiting' }, 'Not kept on this machine yet'],
  [
    'not kept says why and what to do',
    { state: 'failed', reason: 'no room' },
    'Not kept on this machine: no room. Save a file before you leave.',
  ],
  [
    'tried again says so, why, and what to do meanwhile',
    { state: 'failed', reason: 'no room', again: true },
    'Not kept on this machine yet: no room. It is tried again until it works; save a file before you leave.',
  ],
  [
    'deleted elsewhere says how it is kept again',
    { state: 'gone' },
    'Deleted in another window. Your next change here keeps it again.',
  ],
])('work that is %s', (_claim, state, said) => expect(saveStateText(state, 'en-GB')).toBe(said));

test('the time is written as the locale does', () =>
  expect(saveStateText({ state: 'kept', at }, 'en-US').replace(/\s/g, ' ')).toBe('Kept on this machine at 04:30 PM'));
