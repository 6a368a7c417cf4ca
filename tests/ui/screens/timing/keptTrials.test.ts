import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import { trialsSetting } from '../../../../src/ui/app/preferences/settings/timing';
import { createModelStore } from '../../../../src/ui/app/store/modelStore';
import type { Choice } from '../../../../src/ui/app/screenProps';
import { createTrials, textLimit, trialsName, type KeptTrials } from '../../../../src/ui/screens/timing/keptTrials';
import { withBatch, withoutBatch } from '../../../../src/present/timing/sheetEdits';
import { nursery } from '../../../present/nursery';

const file = 'step,plants,seconds\nmoving,60,700\nmoving,50,600\n';

function within(run: (kept: KeptTrials, choice: Choice) => void | Promise<void>): Promise<void> {
  return createRoot(async (dispose) => {
    const { model, origin } = nursery();
    const choice = createChoice(createModelStore(model, origin), { plan: () => 0, against: () => undefined } as never);
    await run(
      createTrials(() => choice),
      choice,
    );
    dispose();
  });
}

describe('trials beside the model', () => {
  it('are none at first', () =>
    within((kept) => {
      expect(kept.any()).toBe(false);
      expect(kept.refusal()).toBe('');
    }));

  it('are opened from a file, and kept with the choice under its name', () =>
    within(async (kept, choice) => {
      await kept.open(new File([file], 'mine.csv'));
      expect(kept.trials().batches.length).toBe(2);
      expect(choice.get(trialsSetting)).toBe(file);
      expect(trialsName(choice)).toBe('mine.csv');
      expect(kept.wayBack()).toBe('mine.csv is open.');
      kept.takeBack();
      expect([kept.text(), trialsName(choice), kept.wayBack()]).toEqual(['', 'trials.csv', '']);
    }));

  it('stay as they were where a file is none, is too large or no text', () =>
    within(async (kept) => {
      await kept.open(new File([file], 'mine.csv'));
      await kept.open(new File(['name,label\na,b\n'], 'model.csv'));
      expect(kept.refusal()).toContain('model.csv: missing columns: step, plants, seconds.');
      await kept.open(new File([file + 'moving,60,700\n'.repeat(textLimit / 14)], 'large.csv'));
      expect(kept.refusal()).toContain('too many trials for this screen: 201 kB, 200 is the most.');
      expect(kept.refusal()).toContain('time FILE');
      await kept.open(new File([new Uint8Array([0xff, 0xd8, 0xff, 0])], 'photo.csv'));
      expect(kept.refusal()).toContain('photo.csv: ');
      expect(kept.text()).toBe(file);
    }));

  it('have a change taken back until the next one', () =>
    within((kept) => {
      kept.replace(file, 'mine.csv', 'open');
      kept.putWithWayBack(withoutBatch(kept.trials().sheet, 2), 'out');
      expect(kept.wayBack()).toBe('out');
      kept.takeBack();
      expect(kept.text()).toBe(file);
      kept.putWithWayBack(withoutBatch(kept.trials().sheet, 2), 'out');
      kept.put(withBatch(kept.trials().sheet, { step: 'moving', plants: '5', seconds: '60' }));
      expect(kept.wayBack()).toBe('');
      kept.takeBack();
      expect(kept.text()).toBe('step,plants,seconds\nmoving,50,600\nmoving,5,60\n');
    }));

  it('refuse an edit that would make them too large', () =>
    within((kept) => {
      kept.replace(file, 'mine.csv', 'open');
      kept.put(withBatch(kept.trials().sheet, { step: 'x'.repeat(textLimit), plants: '5' }));
      expect(kept.refusal()).toContain('too many trials for this screen');
      expect(kept.text()).toBe(file);
      kept.put(withBatch(kept.trials().sheet, { step: 'moving', plants: '5' }));
      expect(kept.refusal()).toBe('');
    }));
});
