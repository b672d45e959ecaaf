// Questions that wait for an answer, and notices that do not.
import { button, element } from './elements.js';

/**
 * Opens a dialog and returns what its buttons return; null when it is closed without an answer.
 *
 * @param isWide Whether it shows pictures, and takes the room of the window.
 */
export function dialog(title, content, answers, { isWide = false } = {}) {
  const box = document.getElementById('ask');
  box.classList.toggle('wide', isWide);
  box.replaceChildren(
    element('h2', { id: 'ask-title' }, title),
    element('form', { method: 'dialog' }, ...content,
      element('div', { className: 'answers' }, ...answers.map(([text, value], i) =>
        element('button', { type: 'submit', value, className: i === 0 && value ? 'chief' : '', formNoValidate: i > 0 }, text)))));
  box.returnValue = '';
  return new Promise((settled) => {
    box.onclose = () => settled(box.returnValue || null);
    box.querySelector('form').onsubmit = (event) => {
      event.preventDefault();
      box.close(event.submitter?.value ?? '');
    };
    box.showModal();
    const first = box.querySelector('input:not([type=radio]), button');
    first?.focus();
    first?.select?.();
  }).finally(() => { box.onclose = null; });
}

const place = () => document.getElementById('notices');

// Where the focus returns when a notice is dismissed.
let cameFrom = null;
place().addEventListener('focusin', (event) => {
  if (!place().contains(event.relatedTarget)) cameFrom = event.relatedTarget;
});

/** Shows a notice above the text, with buttons; it stays until one is pressed or the returned function dismisses it. */
export function notice(sentence, ...answers) {
  const reported = element('div', { className: 'notice', role: 'alert' },
    element('p', {}, sentence),
    ...answers.map(([text, act]) => button(text, () => { putAway(reported); act?.(); })));
  place().append(reported);
  return () => putAway(reported);
}

function putAway(reported) {
  const hadFocus = reported.contains(document.activeElement);
  reported.remove();
  if (hadFocus) (cameFrom?.isConnected ? cameFrom : document.getElementById('words')).focus();
}

/** Whether a sentence is being shown. */
export const isReported = (sentence) => [...place().children].some((reported) => reported.firstChild.textContent === sentence);

/** Dismisses a sentence that is no longer true. */
export const noLongerTell = (sentence) =>
  [...place().children].filter((reported) => reported.firstChild.textContent === sentence).forEach(putAway);

/** Dismisses all notices. */
export const quiet = () => [...place().children].forEach(putAway);
