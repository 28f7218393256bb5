// @ts-check

import { decode, doubtOf } from '../document.js';
import { html } from '../elements.js';
import { createView } from '../view.js';
import { createCompared } from './compared.js';
import { createControls } from './controls.js';
import { findingsOf } from './findings.js';
import { createHoles } from './holes.js';
import { createLine } from './line.js';
import { createSave, downloadPage } from './save.js';
import { createSetUp } from './set-up.js';
import { createStudies } from './studies.js';

/** @typedef {import('../document.js').Launch} Launch */
/** @typedef {import('../document.js').LaunchDocument} LaunchDocument */

/** @param {string} id */
const dataOf = (id) => {
  const text = document.getElementById(id)?.textContent;
  return text ? JSON.parse(text) : null;
};

const desk = /** @type {import('./save.js').DeskData} */ (dataOf('desk'));
const host = /** @type {HTMLElement} */ (document.getElementById('page'));
const first = dataOf('document');
const setUp = createSetUp();
const controls = createControls(setUp);
const compared = createCompared();
const status = html('p', { class: 'status', role: 'status' }, 'connecting');
const trouble = html('div', { class: 'trouble', role: 'alert' });
const undo = button('Undo', () => setUp.undo()), redo = button('Redo', () => setUp.redo());
const pin = button('Pin this set-up', togglePin), save = button('Save as…', () => dialog.open());
const send = button('Page to send…', async () => say(await downloadPage(desk, { edits: setUp.edits, ...(pinned ? { pinned: pinned.edits, pinnedName: 'Pinned' } : {}) })));
const dialog = createSave(desk, () => setUp.edits);
const studies = createStudies({
  ask: (what) => line.ask(what, { edits: setUp.edits }),
  cancel: () => line.ask('cancel'),
  tryOut: (edits) => setUp.put(edits),
});

/** @type {ReturnType<typeof createView> | null} */
let view = null;
/** @type {ReturnType<typeof createHoles> | null} */
let holes = null;
/** @type {import('./controls.js').Control[]} */
let offered = [];
/** @type {LaunchDocument | null} */
let present = null;
/** @type {{ edits: import('./set-up.js').Edit[], launch: Launch | null } | null} */
let pinned = null;
/** @type {any} The last answer that was drawn. */
let answer = {};
/** @type {any} */
let waiting = null;
let version = 0, asked = 0, pinAsked = 0;

const line = createLine(`${location.protocol === 'https:' ? 'wss' : 'ws'}://${location.host}/live?file=${encodeURIComponent(desk.file)}&token=${encodeURIComponent(desk.token)}`, {
  open() {
    say('');
    studies.end();
    if (pinned) {
      pinAsked = line.ask('pin', { edits: pinned.edits });
    }

    solve();
  },
  lost(reason) {
    studies.end();
    say(`The desk does not answer${reason && `: ${reason}`}. What you see is the last launch; trying again.`);
  },
  told: take,
});

host.append(html('nav', { class: 'desk-bar', 'aria-label': 'desk' }, html('strong', {}, desk.file), undo, redo, pin, save, send, status), trouble, dialog.element);
setUp.subscribe(() => {
  undo.disabled = !setUp.canUndo;
  redo.disabled = !setUp.canRedo;
  save.disabled = setUp.edits.length === 0;
  studies.age();
  solve();
});
document.addEventListener('keydown', (event) => {
  if ((event.ctrlKey || event.metaKey) && !event.altKey && !(event.target instanceof HTMLElement && event.target.matches('textarea, input:not([type="range"], [type="radio"])'))) {
    const key = event.key.toLowerCase();
    if (key === 'z' || key === 'y') {
      event.preventDefault();
      (key === 'y' || event.shiftKey ? redo : undo).click();
    }
  }
});
undo.disabled = redo.disabled = save.disabled = true;
if (first) {
  present = decode(first);
  draw();
}

document.documentElement.dataset.ready = 'true';

/** @param {any} message */
function take(message) {
  if (studies.take(message)) {
    return;
  }

  switch (message.tell) {
    case 'launch':
      // The newest that has come by then is drawn; what came before it is not. A frame is not waited for: drawing comes before it.
      if (waiting === null) {
        setTimeout(show);
      }

      waiting = message;
      break;
    case 'refused':
      if (message.number === asked) {
        trouble.replaceChildren(findingsOf('This set-up is impossible; the drawing shows the last one that was not.', message.errors));
        shown(message.number);
      } else if (message.number === pinAsked) {
        pinned = null;
        namePin();
        trouble.replaceChildren(findingsOf('This set-up cannot be pinned.', message.errors));
      }

      break;
    case 'pinned':
      if (pinned && message.document) {
        pinned.launch = { ...decode(message.document).launches[0], name: 'Pinned' };
        draw();
        solve();
      }

      break;
    case 'doubt':
      if (present) {
        present = { ...present, launches: [{ ...present.launches[0], doubt: doubtOf(message.doubt) }] };
        draw();
      }

      break;
    case 'file':
      fileTold(message);
      break;
    default:
      break;
  }
}

function show() {
  const message = waiting;
  waiting = null;
  if (message.number === asked) {
    trouble.replaceChildren(...fileTrouble);
  }

  present = decode(message.document);
  answer = message;
  draw();
  shown(message.number);
}

/** @type {Node[]} */
let fileTrouble = [];

/** @param {any} message */
function fileTold(message) {
  fileTrouble = message.errors.length > 0 ? [findingsOf(`${message.file} has ${message.errors.length === 1 ? 'an error' : 'errors'}; the drawing shows it as it was before.`, message.errors)]
    : message.present === false ? [html('p', {}, `${message.file} is gone from the disk; the drawing shows it as it was.`)] : [];
  trouble.replaceChildren(...fileTrouble);
  if (message.errors.length === 0) {
    offered = message.controls;
    setUp.keep(new Set(offered.map((control) => control.path)));
    controls.show(offered);
    if (present) {
      holes?.show(offered, present.launches[0].car);
    }

    if (version !== 0 && version !== message.version) {
      say(`${message.file} was changed on the disk and read again.`);
    }

    version = message.version;
    solve();
  }
}

function solve() {
  asked = line.ask('solve', { edits: setUp.edits }) || asked;
  document.documentElement.dataset.asked = String(asked);
}

function togglePin() {
  if (pinned) {
    pinned = null;
    line.ask('pin', { edits: null });
    draw();
    solve();
  } else if (present) {
    pinned = { edits: setUp.edits, launch: null };
    pinAsked = line.ask('pin', { edits: pinned.edits });
  }

  namePin();
}

function namePin() {
  pin.textContent = pinned ? 'Unpin' : 'Pin this set-up';
  pin.setAttribute('aria-pressed', String(pinned !== null));
}

function draw() {
  if (!present) {
    return;
  }

  const [launch] = present.launches;
  const doc = { ...present, launches: pinned?.launch ? [launch, pinned.launch] : [launch] };
  if (view) {
    view.show(doc);
  } else {
    view = createView(doc, controls.element, compared.element, studies.element);
    holes = createHoles(view.scene, setUp);
    host.append(view.element);
    view.onRest(() => compared.show(answer));
    compared.show(answer);
  }

  holes?.show(offered, launch.car);
}

/**
 * For those who wait for an answer, such as tests.
 * @param {number} number
 */
function shown(number) {
  document.documentElement.dataset.shown = String(number);
}

/** @param {string} text */
function say(text) {
  status.textContent = text;
}

/**
 * @param {string} text
 * @param {() => void} action
 */
function button(text, action) {
  const element = html('button', { type: 'button' }, text);
  element.addEventListener('click', action);
  return element;
}
