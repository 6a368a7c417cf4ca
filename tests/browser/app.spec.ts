import { expect, test } from './quietPage';

test('the built app opens under its name with nothing refused', async ({ page }) => {
  const answer = await page.goto('/');
  expect(answer?.headers()['content-security-policy']).toContain("script-src 'self'");
  await expect(page).toHaveTitle(/Raftmargin$/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});

test('the policy keeps text from being run as code, and the attempt is noticed', async ({ page, complaints }) => {
  await page.goto('/');
  // In a task of the page's own: what the test evaluates directly is free of the policy.
  const attempt = "new Promise((tell) => setTimeout(() => { try { tell(eval('1')); } catch (e) { tell(e.name); } }))";
  expect(await page.evaluate(attempt)).toBe('EvalError');
  await expect.poll(() => [...complaints]).toEqual(['console: policy: script-src refuses eval']);
  complaints.clear();
});

test('nothing moves while it opens', async ({ page }) => {
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as PerformanceEntry & { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto('/');
  await expect(page.getByText('Nothing changed yet')).toBeVisible();
  // "Good" is at most 0.1 (web.dev, Cumulative Layout Shift); the page with its fonts late has 0.4.
  const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
  expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBeLessThan(0.1);
});
