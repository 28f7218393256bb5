// @ts-check
import { chartsOf } from './all.js';
import { createChart } from './chart.js';
import { html } from './elements.js';

/**
 * All charts of a document, group by group, each group below what it shows in words.
 * @param {HTMLElement} host What they are put into.
 * @param {import('../cursor.js').Cursor} cursor
 * @param {import('./range.js').TimeRange} range
 */
export function createBoard(host, cursor, range) {
  /** @type {Map<string, { section: HTMLElement, heading: HTMLElement, grid: HTMLElement }>} */
  const groups = new Map();
  /** @type {Map<string, ReturnType<typeof createChart>>} */
  const charts = new Map();

  /** @param {string} name */
  function groupOf(name) {
    const found = groups.get(name);
    if (found !== undefined) {
      return found;
    }

    const heading = html('h3', 'chart-group-title');
    const grid = html('div', 'chart-grid-of');
    const section = html('section', 'chart-group', [heading, grid]);
    heading.id = `charts-${name}`;
    section.setAttribute('aria-labelledby', heading.id);
    const made = { section, heading, grid };
    groups.set(name, made);
    host.append(section);
    return made;
  }

  return {
    /**
     * Shows a document in the place of the one before: what both have is kept, so that a page does not jump.
     * @param {import('./view.js').LaunchSource} source
     */
    show(source) {
      const seen = new Set();
      for (const { name, title, charts: shown } of chartsOf(source)) {
        const { heading, grid, section } = groupOf(name);
        heading.textContent = title;
        section.hidden = shown.length === 0;
        for (const data of shown) {
          seen.add(data.name);
          const chart = charts.get(data.name) ?? createChart(grid, cursor, range);
          charts.set(data.name, chart);
          // In the register's order, whichever came first.
          if (grid.children[shown.indexOf(data)] !== chart.element) {
            grid.insertBefore(chart.element, grid.children[shown.indexOf(data)] ?? null);
          }

          chart.show(data);
        }
      }

      for (const [name, chart] of charts) {
        if (!seen.has(name)) {
          chart.dispose();
          charts.delete(name);
        }
      }
    },
    dispose() {
      charts.forEach((chart) => chart.dispose());
      groups.forEach(({ section }) => section.remove());
      charts.clear();
      groups.clear();
    },
  };
}
