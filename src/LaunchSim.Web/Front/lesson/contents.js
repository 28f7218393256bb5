// @ts-check

import { html } from '../elements.js';

/**
 * The table of contents; the chapter that is being read is marked.
 * @param {{ id: string, title: string }[]} chapters
 * @param {HTMLElement[]} sections
 */
export function contentsOf(chapters, sections) {
  const links = chapters.map(({ id, title }) => html('a', { href: `#${id}` }, title));
  const seen = new Set();
  const watch = new IntersectionObserver((entries) => {
    for (const entry of entries) {
      seen[entry.isIntersecting ? 'add' : 'delete'](entry.target);
    }

    const first = sections.findIndex((section) => seen.has(section));
    links.forEach((link, i) => {
      if (i === first) {
        link.setAttribute('aria-current', 'true');
      } else {
        link.removeAttribute('aria-current');
      }
    });
  }, { rootMargin: '-20% 0px -60% 0px' });
  sections.forEach((section) => watch.observe(section));
  return html('nav', { class: 'contents', 'aria-label': 'Chapters' }, html('ol', {}, ...links.map((link) => html('li', {}, link))));
}
