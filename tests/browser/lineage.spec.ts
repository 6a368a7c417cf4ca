import { labelOf, openApp } from './page';
import { expect, test } from './quietPage';

for (const width of [1440, 390]) {
  test(`a comma stays in the line of the link before it, ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await openApp(page);
    // It feeds so many that their links take several lines.
    await labelOf(page, 'Time on nursery boards').click();
    const links = page.locator('.links > span', { hasText: /,$/ });
    await expect(links.nth(8)).toBeVisible();
    const astray = await links.evaluateAll((all) =>
      all.filter(({ lastChild, firstElementChild }) => {
        const comma = document.createRange();
        comma.selectNode(lastChild!);
        return comma.getBoundingClientRect().left < firstElementChild!.getBoundingClientRect().right - 1;
      }),
    );
    expect(astray).toEqual([]);
  });
}
