// @ts-check

import { createAnswers } from './answers.js';
import { createBoard } from './board.js';
import { createRange } from './charts/range.js';
import { createCursor } from './cursor.js';
import { html } from './elements.js';
import { figuresOf } from './figures.js';
import { createInstant } from './instant.js';
import { createPaths } from './paths.js';
import { createPlayer } from './player.js';
import { createScene } from './scene/scene.js';
import { doubtsOf, footOf, sentencesOf } from './words.js';

/** The hand rests when nothing was moved for so long, ms: above what a change takes, lest what follows delays the next one. */
const REST = 300;

/**
 * All of a launch that moves: what the page and the desk have in common.
 * @typedef {{
 *   element: HTMLElement, scene: import('./scene/scene.js').Scene, cursor: import('./cursor.js').Cursor, readonly document: import('./document.js').LaunchDocument,
 *   show(doc: import('./document.js').LaunchDocument): void, onRest(listener: () => void): void
 * }} View
 */

/**
 * @param {import('./document.js').LaunchDocument} first
 * @param {...Node} under What stands between the player and the load by path.
 * @returns {View}
 */
export function createView(first, ...under) {
  let doc = first;
  const cursor = createCursor(longest(doc)), range = createRange(longest(doc));
  const scene = createScene(doc, cursor);
  const answers = createAnswers(scene, () => doc);
  const player = createPlayer(cursor);
  const board = createBoard(cursor, range);
  const title = html('header');
  const said = html('div', { class: 'said' }), told = html('div', { class: 'told' });
  const element = html('div', { class: 'view' }, title,
    html('section', { class: 'moving', 'aria-label': 'the launch, moving' }, answers.element, html('div', { class: 'controls' }, player.element, lookAt(scene)), ...under, createPaths(scene, () => doc), createInstant(scene, cursor, () => doc)),
    board.beside, said, board.more, told);

  function tell() {
    title.replaceChildren(...headOf(doc));
    board.showMore(doc);
    answers.point();
    said.replaceChildren(sentencesOf(doc));
    resters.forEach((listener) => listener());
    told.replaceChildren(...[doubtsOf(doc), figuresOf(doc), footOf(doc)].flatMap((part) => part ?? []));
  }

  // While a setting is dragged the drawing keeps up at once; what is read follows when the hand rests.
  let resting = 0;
  /** @type {(() => void)[]} */
  const resters = [];
  board.show(doc);
  tell();
  return {
    element,
    scene,
    cursor,
    get document() {
      return doc;
    },
    show(next) {
      doc = next;
      if (longest(doc) !== cursor.duration) {
        range.reach(longest(doc));
        cursor.reach(longest(doc));
      }

      scene.show(doc);
      board.show(doc);
      clearTimeout(resting);
      resting = setTimeout(tell, REST);
    },
    onRest(listener) {
      resters.push(listener);
    },
  };
}

/** @param {import('./document.js').LaunchDocument} doc */
function longest(doc) {
  return Math.max(...doc.launches.map((launch) => launch.duration));
}

/** @param {import('./document.js').LaunchDocument} doc */
function headOf(doc) {
  return doc.launches.map((launch, i) => {
    const several = doc.launches.length > 1;
    return html('div', { class: `named launch-${i}` }, html(i === 0 ? 'h1' : 'h2', {}, several ? html('span', { class: 'letter' }, 'ABC'[i]) : null, launch.name), html('p', { class: 'quiet' }, launch.staticLine));
  });
}

/** @param {import('./scene/scene.js').Scene} scene */
function lookAt(scene) {
  const buttons = /** @type {const} */ ([['whole', 'Whole car'], ['rear', 'Rear end']]).map(([view, text]) => {
    const button = html('button', { type: 'button', 'aria-pressed': view === 'whole' ? 'true' : 'false' }, text);
    button.addEventListener('click', () => {
      scene.look(view);
      for (const other of buttons) {
        other.setAttribute('aria-pressed', String(other === button));
      }
    });
    return button;
  });
  return html('div', { class: 'look', role: 'group', 'aria-label': 'what is drawn' }, ...buttons);
}
