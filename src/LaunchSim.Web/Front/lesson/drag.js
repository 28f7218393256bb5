// @ts-check

/**
 * Lets a mark of a drawing be dragged; whoever cannot drag has the sliders.
 * @param {SVGSVGElement} drawing
 * @param {SVGElement} mark
 * @param {() => import('./stage.js').Window | null} current
 * @param {(place: [number, number]) => void} moved Told the place, m.
 */
export function followDrag(drawing, mark, current, moved) {
  mark.addEventListener('pointerdown', (event) => {
    mark.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  mark.addEventListener('pointermove', (event) => {
    const window = current();
    if (window && mark.hasPointerCapture(event.pointerId)) {
      const box = drawing.getBoundingClientRect(), shown = box.width / window.width;
      moved([((event.clientX - box.left) / shown / window.scale) - window.left, (window.ground - ((event.clientY - box.top) / shown)) / window.scale]);
    }
  });
}
