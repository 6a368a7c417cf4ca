import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe finds in a part of the page; with rules, only by these. */
export async function axeFindings(page: Page, within: string, rules: readonly string[] = []): Promise<string[]> {
  // The page has no frames, and only what is wrong is read: that saves most of the time.
  const axe = new AxeBuilder({ page }).include(within).setLegacyMode();
  axe.options({ resultTypes: ['violations'], iframes: false, preload: false });
  if (rules.length > 0) axe.withRules([...rules]);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary = '' }) => `${id}: ${html} ${failureSummary}`),
  );
}

/**
 * Targets in sight that are smaller than a size and fall under no exception of WCAG 2.2, 2.5.8: with a circle of that
 * size around each small one's middle that meets no other target nor the circle of another small one, they are far
 * enough apart; and a link within a line of text is as high as the line.
 */
export function smallTargets(page: Page, within: string, size = 24): Promise<string[]> {
  return page.evaluate(
    ([selector, least]) => {
      interface Target {
        readonly element: Element;
        readonly box: DOMRect;
      }
      const kinds = 'a[href], button, input, select, textarea, summary, [role=button], [role=slider], [tabindex="0"]';
      const boxOf = (element: Element): DOMRect => {
        // A label around its field is part of the target.
        const label = element instanceof HTMLInputElement ? element.closest('label') : null;
        return (label ?? element).getBoundingClientRect();
      };
      const isOnLine = (element: Element): boolean =>
        getComputedStyle(element).display.startsWith('inline') &&
        [...(element.parentElement?.childNodes ?? [])].some(
          (node) => node !== element && node.nodeType !== Node.COMMENT_NODE && (node.textContent ?? '').trim() !== '',
        ) &&
        element.closest('p, li, dd, td, th, span') !== null;
      const targets: Target[] = [...document.querySelectorAll(kinds)]
        .filter((one) => one.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
        .filter((one) => !(one as HTMLButtonElement).disabled && one.closest('[inert], [aria-hidden=true]') === null)
        .map((element) => ({ element, box: boxOf(element) }))
        .filter(({ box }) => box.width > 1 && box.height > 1);
      const isSmall = ({ box }: Target): boolean => box.width < least - 0.5 || box.height < least - 0.5;
      const middle = ({ box }: Target): [number, number] => [box.x + box.width / 2, box.y + box.height / 2];
      const meets = (one: Target, other: Target): boolean => {
        const [x, y] = middle(one);
        const [nearX, nearY] = isSmall(other)
          ? middle(other)
          : [
              Math.min(Math.max(x, other.box.left), other.box.right),
              Math.min(Math.max(y, other.box.top), other.box.bottom),
            ];
        return Math.hypot(nearX - x, nearY - y) < (isSmall(other) ? least : least / 2) - 0.5;
      };
      return targets
        .filter((one) => one.element.closest(selector) !== null && isSmall(one) && !isOnLine(one.element))
        .filter((one) =>
          targets.some((other) => {
            const nested = other.element.contains(one.element) || one.element.contains(other.element);
            return other !== one && !nested && meets(one, other);
          }),
        )
        .map(({ element, box }) => `${box.width.toFixed()}×${box.height.toFixed()} ${element.outerHTML.slice(0, 160)}`);
    },
    [within, size] as const,
  );
}

/** Pictures in sight that say nothing with a number to those who do not see them. */
export function speechlessPictures(page: Page, within: string): Promise<string[]> {
  return page.evaluate(
    (selector) =>
      [...document.querySelectorAll(`:is(${selector}) :is(canvas, svg)`)]
        .filter((picture) => picture.checkVisibility() && picture.closest('[aria-hidden=true]') === null)
        .filter((picture) => {
          const named = picture.closest('[role=img], [role=group][aria-label], figure[aria-label]') ?? picture;
          const by = [named.getAttribute('aria-labelledby'), named.getAttribute('aria-describedby')].flatMap((ids) =>
            (ids ?? '').split(' ').filter(Boolean),
          );
          const said = [named.getAttribute('aria-label'), ...by.map((id) => document.getElementById(id)?.textContent)];
          return !/\d/.test(said.join(' '));
        })
        .map((picture) => picture.outerHTML.slice(0, 200)),
    within,
  );
}

/** What reaches beyond the sides of the window outside of boxes that scroll, and whether the window scrolls so. */
export function beyondTheSides(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const isInScroller = (element: Element): boolean => {
      for (let at = element.parentElement; at !== null && at !== document.body; at = at.parentElement)
        if (/auto|scroll/.test(getComputedStyle(at).overflowX)) return true;
      return false;
    };
    const over = document.documentElement.scrollWidth - wide;
    const outside = [...document.querySelectorAll('body *')]
      .filter((one) => [...one.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim()))
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && one.closest('.heard, .skip') === null)
      .filter((one) => {
        const { left, right, width } = one.getBoundingClientRect();
        return width > 1 && (left < -1 || right > wide + 1) && !isInScroller(one);
      })
      .map((one) => `beyond: ${one.outerHTML.slice(0, 160)}`);
    return over > 0 ? [`the window scrolls sideways by ${over}`, ...outside] : outside;
  });
}

/** The share of the window’s height that what stays in place covers, scrolled to the middle of the page. */
export async function coveredShare(page: Page): Promise<number> {
  return page.evaluate(async () => {
    scrollTo(0, document.documentElement.scrollHeight / 2);
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    const x = innerWidth / 2;
    let covered = 0;
    for (let y = 1; y < innerHeight; y += 2) {
      const stays = document
        .elementsFromPoint(x, y)
        .some((one) => /sticky|fixed/.test(getComputedStyle(one).position) && one.closest('.side-half') !== one);
      if (stays) covered += 2;
    }
    return covered / innerHeight;
  });
}
