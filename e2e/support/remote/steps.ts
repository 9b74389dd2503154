/** How something is found on a page of a browser that Playwright doesn't drive: steps, carried out in the page. */
import type { Role } from '../screen.ts';

/** Words to be looked for: exactly, anywhere in the text, or by a pattern. */
export type Words = { exactly: string } | { within: string } | { pattern: string; flags: string };

export type Step =
  | { css: string }
  | { role: Role; name?: Words }
  | { label: Words }
  | { hasText: Words }
  | { at: number };

export function words(of: string | RegExp, exact = false): Words {
  if (of instanceof RegExp) return { pattern: of.source, flags: of.flags };
  return exact ? { exactly: of } : { within: of };
}

/** Runs in the page: the elements at the end of these steps, in the order of the document. */
export function found(steps: Step[]): HTMLElement[] {
  const plain = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();
  const fits = (text: string, wanted: Words): boolean => {
    if ('exactly' in wanted) return text === wanted.exactly;
    if ('within' in wanted) return text.toLowerCase().includes(wanted.within.toLowerCase());
    return new RegExp(wanted.pattern, wanted.flags).test(text);
  };
  const kinds: Record<Role, string> = {
    button: 'button, [role=button]',
    link: 'a[href]',
    navigation: 'nav',
    region: 'section, [role=region]',
  };
  const named = (ids: string) => ids.split(/\s+/).map((id) => document.getElementById(id)?.textContent).join(' ');
  const nameOf = (el: HTMLElement): string => {
    const [by, label] = [el.getAttribute('aria-labelledby'), el.getAttribute('aria-label')];
    if (by) return plain(named(by));
    if (label) return plain(label);
    // What is hidden from readers is no part of a name.
    const copy = el.cloneNode(true) as HTMLElement;
    for (const hidden of copy.querySelectorAll('[aria-hidden=true]')) hidden.remove();
    return plain(copy.textContent);
  };
  const labelled = (el: HTMLElement): string[] => {
    const labels = 'labels' in el ? [...((el as HTMLInputElement).labels ?? [])].map((label) => plain(label.textContent)) : [];
    const own = el.getAttribute('aria-labelledby') || el.getAttribute('aria-label') ? [nameOf(el)] : [];
    return [...labels, ...own];
  };
  const shows = (el: HTMLElement) => el.getClientRects().length > 0;
  const below = (all: ParentNode[], css: string): HTMLElement[] => {
    const unique = new Set(all.flatMap((root) => [...root.querySelectorAll<HTMLElement>(css)]));
    return [...unique];
  };
  return steps.reduce<HTMLElement[]>(
    (all, step, i) => {
      const roots: ParentNode[] = i === 0 ? [document] : all;
      if ('css' in step) return below(roots, step.css);
      if ('at' in step) return all.slice(step.at, step.at + 1);
      if ('hasText' in step) return all.filter((el) => fits(plain(el.textContent), step.hasText));
      if ('label' in step) return below(roots, '*').filter((el) => labelled(el).some((label) => fits(label, step.label)));
      const { role, name } = step;
      return below(roots, kinds[role]).filter((el) => shows(el) && (!name || fits(nameOf(el), name)));
    },
    [],
  );
}
