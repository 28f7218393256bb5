// @ts-check

import { svg } from '../elements.js';
import { px } from '../scene/path.js';

/** Half of what a finger needs, px. */
const REACH = 13;

/**
 * The brackets' holes on the drawing itself: each can be picked with pointer and keys, the one in use is filled.
 * @param {import('../scene/scene.js').Scene} scene
 * @param {import('./set-up.js').SetUp} setUp
 */
export function createHoles(scene, setUp) {
  const element = svg('svg', { class: 'holes' });
  scene.element.append(element);
  /** @type {{ control: import('./controls.js').Control, name: string, hole: import('../document.js').Hole, group: SVGGElement }[]} */
  let holes = [];

  function place() {
    const { window, pose } = scene;
    element.setAttribute('viewBox', `0 0 ${window.width} ${window.height}`);
    element.setAttribute('width', String(window.width));
    element.setAttribute('height', String(window.height));
    for (const { hole, group } of holes) {
      const [x, z] = hole.onAxle ? pose.housing(...hole.at) : pose.body(...hole.at);
      group.setAttribute('transform', `translate(${px(window.x(x))} ${px(window.y(z))})`);
    }
  }

  function mark() {
    for (const { control, name, group } of holes) {
      const isUsed = (setUp.valueOf(control.path) ?? control.value) === name;
      group.classList.toggle('used', isUsed);
      group.setAttribute('aria-checked', String(isUsed));
      group.setAttribute('tabindex', isUsed ? '0' : '-1');
    }
  }

  /** @param {number} index */
  function pick(index) {
    const { control, name } = holes[index];
    setUp.move(control.path, name === control.value ? null : name);
    setUp.settle();
    holes[index].group.focus();
  }

  // Holes may stand closer than a finger is wide: the nearest is meant.
  element.addEventListener('click', (event) => {
    let best = -1, least = 2 * REACH;
    holes.forEach(({ group }, i) => {
      const box = /** @type {SVGCircleElement} */ (group.lastElementChild).getBoundingClientRect();
      const way = Math.hypot(box.x + (box.width / 2) - event.clientX, box.y + (box.height / 2) - event.clientY);
      if (way < least) {
        [best, least] = [i, way];
      }
    });
    if (best >= 0) {
      pick(best);
    }
  });
  element.addEventListener('keydown', (event) => {
    const at = holes.findIndex(({ group }) => group === document.activeElement);
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (at >= 0 && (step !== undefined || event.key === ' ' || event.key === 'Enter')) {
      event.preventDefault();
      event.stopPropagation();
      const own = holes.map((_, i) => i).filter((i) => holes[i].control === holes[at].control);
      pick(step === undefined ? at : own[(own.indexOf(at) + step + own.length) % own.length]);
    }
  });
  scene.onDraw(place);
  setUp.subscribe(mark);
  return {
    /**
     * @param {import('./controls.js').Control[]} controls
     * @param {import('../document.js').Car} car
     */
    show(controls, car) {
      // The same holes, perhaps elsewhere: those that are there are moved, and what has the focus keeps it.
      const next = controls.filter((control) => control.kind === 'holes').flatMap((control) => car.holes.filter((hole) => `${hole.bracket}.use` === control.path).map((hole) => ({ control, hole })));
      if (next.length === holes.length && next.every(({ control, hole }, i) => control === holes[i].control && hole.name === holes[i].name)) {
        next.forEach(({ hole }, i) => {
          holes[i].hole = hole;
        });
        mark();
        place();
        return;
      }

      const focused = holes.find(({ group }) => group === document.activeElement);
      const made = controls.filter((control) => control.kind === 'holes').flatMap((control) => {
        const found = car.holes.filter((hole) => `${hole.bracket}.use` === control.path);
        const own = found.map((hole) => ({
          control, name: hole.name, hole,
          group: svg('g', { class: 'hole', role: 'radio', 'data-keys': true, 'data-hole': `${control.path}=${hole.name}`, 'aria-label': `${control.label}: hole ${hole.name}` },
            svg('title', {}, `${control.label}: hole ${hole.name}`), svg('circle', { class: 'reach', r: REACH }), svg('circle', { class: 'ring', r: 4.5 })),
        }));
        return own.length > 0 ? [{ control, own }] : [];
      });
      holes = made.flatMap(({ own }) => own);
      element.replaceChildren(...made.map(({ control, own }) => svg('g', { role: 'radiogroup', 'aria-label': control.label }, ...own.map(({ group }) => group))));
      mark();
      place();
      if (focused) {
        holes.find(({ control, name }) => control.path === focused.control.path && name === (setUp.valueOf(control.path) ?? control.value))?.group.focus();
      }
    },
  };
}
