import { expect, it } from 'vitest';
import { pictureLayout } from '../../src/jobs/pictureLayout';

it('lays boxes out whatever the model is, and says so at once', () => {
  const boxes = [0, 1].map((id) => ({ id, width: 100, height: 40 }));
  const job = pictureLayout(
    { model: undefined as never, values: [] },
    { boxes, arrows: [{ from: 0, to: 1 }], direction: 'across' },
  );
  const { done, value } = job.next();
  expect(done).toBe(true);
  expect(value).toMatchObject({ boxes: [{ id: 0 }, { id: 1 }], arrows: [{ from: 0, to: 1 }] });
});
