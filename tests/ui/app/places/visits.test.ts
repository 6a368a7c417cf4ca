// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import type { Place } from '../../../../src/ui/app/places/place';
import { createVisits, leaveForModel, type Visits } from '../../../../src/ui/app/places/visits';

/** A page whose place changes as a person would change it. */
class Given {
  here: Place = { question: 'numbers', side: 'beds', entry: '', shelf: false, model: 'a', shipped: '', row: undefined };
  readonly left: string[] = [];
  known = new Set(['a']);
  readonly visits: Visits = createVisits(this.here, {
    here: () => this.here,
    isOpen: (model) => this.known.has(model),
    openModel: ({ model }) => {
      this.left.push(model);
      return Promise.resolve(true);
    },
    show: (place) => {
      this.here = { ...this.here, question: place.question, side: place.side, shelf: place.shelf };
    },
  });
  go(more: Partial<Place>): void {
    this.here = { ...this.here, ...more };
    this.visits.arrive(undefined);
  }
}

/** Steps through the history as the browser does, which takes a moment. */
async function step(by: number, { visits }: Given): Promise<void> {
  const arrived = new Promise((done) => addEventListener('popstate', done, { once: true }));
  history.go(by);
  await arrived;
  await visits.follow();
}

beforeEach(() => history.pushState(null, '', '/'));

describe('the program’s places in the browser’s history', () => {
  it('are added as somebody goes on, and found again by Back and Forward', async () => {
    const given = new Given();
    given.go({ question: 'beds' });
    given.go({ question: 'timing' });
    expect(location.hash).toBe('#timing');
    await step(-1, given);
    expect([given.here.question, location.hash]).toEqual(['beds', '#beds']);
    await step(-1, given);
    expect([given.here.question, location.hash]).toEqual(['numbers', '']);
    await step(2, given);
    expect(given.here.question).toBe('timing');
  });
  it('are not added where nothing has changed', () => {
    const given = new Given();
    const before = history.length;
    given.go({});
    given.go({});
    expect(history.length).toBe(before);
  });
  it('are not added by a shelf that is closed', () => {
    const given = new Given();
    given.go({ shelf: true });
    const before = history.length;
    expect(location.hash).toBe('#your-models');
    given.go({ shelf: false });
    expect([history.length, location.hash]).toEqual([before, '']);
  });
  it('of another model are left for', async () => {
    const given = new Given();
    given.go({ question: 'beds' });
    given.known = new Set(['b']);
    given.go({ model: 'b', question: 'numbers' });
    await step(-1, given);
    expect([given.left, given.here.question]).toEqual([['a'], 'numbers']);
  });
  it('of a model that has another id by now are this model’s', async () => {
    const given = new Given();
    given.go({ question: 'beds' });
    given.here = { ...given.here, model: 'copy' };
    given.known.add('copy');
    given.go({ question: 'timing' });
    await step(-2, given);
    expect([given.left, given.here.question]).toEqual([[], 'numbers']);
    const before = history.length;
    given.visits.arrive(undefined);
    expect(history.length).toBe(before);
  });
  it('may be named by an address that somebody enters', async () => {
    const given = new Given();
    history.replaceState(null, '', '#how-sure');
    await given.visits.follow();
    expect(given.here.question).toBe('how sure');
    given.go({ question: 'beds' });
    await step(-1, given);
    expect(given.here.question).toBe('how sure');
  });
  it('begin anew with a model that the page is left for, one step on', async () => {
    const given = new Given();
    given.go({ shelf: true });
    leaveForModel();
    const again = new Given();
    await again.visits.follow();
    expect(history.state).toMatchObject({ depth: 2, question: 'numbers' });
  });
});

it('a model that is deleted leaves no place to go back to', () => {
  new Given().go({ shelf: true });
  const before = history.length;
  leaveForModel(true);
  expect([history.length, location.hash, history.state]).toEqual([before, '', { depth: 1 }]);
});

describe('a link to an entry', () => {
  it('is a place, and the way back leads to where it stood', async () => {
    const given = new Given();
    document.body.innerHTML =
      '<div class="entry"><button class="ask">Margin</button><button id="link">Sales</button></div>';
    const link = document.getElementById('link')!;
    given.visits.arrive({ row: 12, focused: link, scroll: 0 });
    expect([location.hash, given.visits.wayBack()]).toEqual(['#numbers/12', 'Back to Margin']);
    given.visits.arrive({ row: 12, focused: link, scroll: 0 });
    const arrived = new Promise((done) => addEventListener('popstate', done, { once: true }));
    given.visits.goBack();
    await arrived;
    await given.visits.follow();
    await new Promise((done) => requestAnimationFrame(done));
    expect(document.activeElement).toBe(link);
    expect([location.hash, given.visits.wayBack()]).toEqual(['#numbers/12', 'Back to Margin']);
    given.visits.forget();
    expect(given.visits.wayBack()).toBeUndefined();
    await step(-1, given);
    expect([location.hash, given.visits.wayBack()]).toEqual(['', undefined]);
  });
});
