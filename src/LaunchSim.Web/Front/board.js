// @ts-check

import { chartsOf } from './charts/all.js';
import { createChart } from './charts/chart.js';
import { html } from './elements.js';

/** Charts that stand beside the drawing, so that the first look has what is asked first. */
const BESIDE = ['rises', 'tyre-loads'];

/** The groups that they are of: these keep up while a setting is dragged, the others follow. */
const QUICK = ['rises-and-gaps', 'tyre-loads'];

/**
 * @typedef {{ name: string, element: HTMLElement, title: HTMLElement, charts: Map<string, ReturnType<typeof createChart>>, grid: HTMLElement }} Group
 */

/**
 * All charts of the page, in two places: the most telling beside the drawing, the others below. A chart keeps its place and
 * its zoom when other launches are shown.
 * @param {import('./cursor.js').Cursor} cursor
 * @param {import('./charts/range.js').TimeRange} range
 */
export function createBoard(cursor, range) {
  const beside = html('section', { class: 'beside', 'aria-label': 'charts beside the drawing' });
  const more = html('section', { class: 'more', 'aria-label': 'more charts' });
  /** @type {Map<string, Group>} */
  const groups = new Map();

  /**
   * @param {string} name
   * @param {HTMLElement} place
   */
  function groupOf(name, place) {
    const key = `${place.className} ${name}`;
    let group = groups.get(key);
    if (!group) {
      const title = html('h2', { class: 'chart-group-title' }), grid = html('div', { class: 'chart-grid-of' });
      const element = html('div', { class: 'chart-group', 'data-group': name }, title, grid);
      place.append(element);
      group = { name, element, title, grid, charts: new Map() };
      groups.set(key, group);
    }

    return group;
  }

  return {
    beside,
    more,
    /**
     * Shows the charts beside the drawing at once.
     * @param {import('./document.js').LaunchDocument} doc
     */
    show(doc) {
      showGroups(doc, true);
    },
    /**
     * Shows the others.
     * @param {import('./document.js').LaunchDocument} doc
     */
    showMore(doc) {
      showGroups(doc, false);
    },
  };

  /**
   * @param {import('./document.js').LaunchDocument} doc
   * @param {boolean} isQuick
   */
  function showGroups(doc, isQuick) {
    /** @type {Map<Group, Set<string>>} */
    const shown = new Map();
    for (const { name, title, charts } of chartsOf(doc, (one) => QUICK.includes(one) === isQuick)) {
      charts.forEach((data, i) => {
        const group = groupOf(name, BESIDE.includes(data.name) ? beside : more);
        // A group that stands in two places is named where it begins.
        const isNamed = i === 0 || shown.get(group)?.size;
        group.title.hidden = !isNamed;
        group.title.textContent = isNamed ? title : '';
        shown.set(group, (shown.get(group) ?? new Set()).add(data.name));
        let chart = group.charts.get(data.name);
        if (!chart) {
          chart = createChart(group.grid, cursor, range);
          group.charts.set(data.name, chart);
        }

        chart.show(data);
      });
    }

    for (const group of groups.values()) {
      if (QUICK.includes(group.name) === isQuick) {
        const kept = shown.get(group);
        for (const [name, chart] of group.charts) {
          if (!kept?.has(name)) {
            chart.dispose();
            group.charts.delete(name);
          }
        }

        group.element.hidden = !kept;
      }
    }
  }
}
