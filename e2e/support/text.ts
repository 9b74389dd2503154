/** What is wrong with the words on a page: cut off, or over one another. */
import type { Page } from '@playwright/test';

/** In words; words that end in an ellipsis by intent are left out, and so is what is reached by scrolling. */
export function spoiltWords(page: Page, within: string): Promise<string[]> {
  return page.evaluate((within) => {
    const faults: string[] = [];
    const texts: { says: string; of: Element; box: DOMRect }[] = [];
    const root = document.querySelector(within);
    if (!root) return [`there is no ${within}`];
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement;
      const says = node.textContent?.trim() ?? '';
      if (!of || !says || !of.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      // Read aloud only.
      const hidden = (el: Element | null): boolean => el !== null && (getComputedStyle(el).clipPath !== 'none' || hidden(el.parentElement));
      if (hidden(of)) continue;
      for (const box of range.getClientRects()) texts.push({ says, of, box });
    }
    const shown: typeof texts = [];
    for (const text of texts) {
      let { left, right, top, bottom } = text.box;
      let scrolledAway = false;
      for (let at: Element | null = text.of; at && at !== document.documentElement; at = at.parentElement) {
        const { overflowX, overflowY, textOverflow } = getComputedStyle(at);
        const clip = at.getBoundingClientRect();
        const scrolls = overflowY === 'auto' || overflowY === 'scroll';
        if (overflowX !== 'visible' && (left < clip.left - 1 || right > clip.right + 1)) {
          if (textOverflow !== 'ellipsis') faults.push(`"${text.says}" is cut off at the side`);
          [left, right] = [Math.max(left, clip.left), Math.min(right, clip.right)];
        }
        // A line's box is higher than its letters.
        const slack = (bottom - top) * 0.2;
        if (overflowY !== 'visible' && (top < clip.top - slack || bottom > clip.bottom + slack)) {
          scrolledAway = scrolls;
          if (scrolls) break;
          faults.push(`"${text.says}" is cut off above or below`);
        }
      }
      if (!scrolledAway && right > left) shown.push({ ...text, box: new DOMRect(left, top, right - left, bottom - top) });
    }
    for (const [i, one] of shown.entries()) {
      for (const other of shown.slice(i + 1)) {
        if (one.of === other.of) continue;
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // The boxes of lines overlap a little where their letters don't.
        if (wide > 2 && high > Math.min(one.box.height, other.box.height) * 0.3) {
          faults.push(`"${one.says}" lies over "${other.says}"`);
        }
      }
    }
    return [...new Set(faults)];
  }, within);
}
