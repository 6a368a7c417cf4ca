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
