import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { shippedModels } from '../../../../src/ui/app/files/shippedModels';

const fetched = vi.fn<() => Promise<Response>>();

beforeEach(() => vi.stubGlobal('fetch', fetched));

afterEach(() => {
  fetched.mockReset();
  vi.unstubAllGlobals();
});

const [model] = shippedModels;

test('a model that was asked for ahead is fetched once, and again when it is opened again', async () => {
  fetched.mockImplementation(() => Promise.resolve(new Response('name,formula')));
  model.askAhead();
  expect(await model.load()).toBe('name,formula');
  expect(fetched).toHaveBeenCalledOnce();
  expect(await model.load()).toBe('name,formula');
  expect(fetched).toHaveBeenCalledTimes(2);
});

test('one that could not be had ahead is told to whoever opens it, and can be had after that', async () => {
  fetched.mockResolvedValueOnce(new Response('', { status: 503, statusText: 'Busy' }));
  model.askAhead();
  await expect(model.load()).rejects.toThrow('503 Busy');
  fetched.mockResolvedValueOnce(new Response('name'));
  expect(await model.load()).toBe('name');
});
