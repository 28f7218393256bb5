// @ts-check

import { decode } from './document.js';
import { createView } from './view.js';

const data = /** @type {HTMLElement} */ (document.getElementById('document'));
const view = createView(decode(JSON.parse(data.textContent ?? '')));
/** @type {HTMLElement} */ (document.getElementById('page')).append(view.element);
document.documentElement.dataset.ready = 'true';
