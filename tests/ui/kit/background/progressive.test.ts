import { describe, expect, it } from 'vitest';
import { progressiveStage } from '../../../../src/ui/kit/background/progressive';

function* answers(): Generator<string | undefined, void> {
  yield undefined;
  yield 'coarse';
  yield undefined;
  yield 'fine';
}

describe('better and better answers are shown', () => {
  it('each once, and the last as the last', () => {
    const shown: string[] = [];
    const stage = progressiveStage(answers(), (found, done) => shown.push(`${found}${done ? ', done' : ''}`));
    for (let done = false; !done;) {
      done = stage.step();
      stage.show(done);
    }
    expect(shown).toEqual(['coarse', 'fine', 'fine, done']);
  });

  it('only the latest where several are found at a time', () => {
    const shown: string[] = [];
    const stage = progressiveStage(answers(), (found) => shown.push(found));
    while (!stage.step());
    stage.show(true);
    expect(shown).toEqual(['fine']);
  });

  it('not at all where there is none', () => {
    const shown: string[] = [];
    const stage = progressiveStage<string>([][Symbol.iterator](), (found) => shown.push(found));
    stage.show(stage.step());
    expect(shown).toEqual([]);
  });
});
