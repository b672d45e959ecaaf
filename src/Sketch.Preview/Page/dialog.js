// Questions that wait for an answer, and notices that do not.
import { button, element } from './elements.js';

/** Opens a dialog and returns what its buttons return; null when it is closed without an answer. */
export function dialog(title, content, answers) {
  const box = document.getElementById('ask');
  box.replaceChildren(
    element('h2', { id: 'ask-title' }, title),
    element('form', { method: 'dialog' }, ...content,
      element('div', { className: 'answers' }, ...answers.map(([text, value], i) =>
        element('button', { type: 'submit', value, className: i === 0 ? 'chief' : '', formNoValidate: !value }, text)))));
  box.returnValue = '';
  return new Promise((settled) => {
    box.onclose = () => settled(box.returnValue || null);
    box.querySelector('form').onsubmit = (event) => {
      event.preventDefault();
      box.close(event.submitter?.value ?? '');
    };
    box.showModal();
    box.querySelector('input:not([type=radio]), button')?.focus();
  }).finally(() => { box.onclose = null; });
}

const place = () => document.getElementById('notice');

/** Tells something above the text, with buttons; it stays until one is pressed. */
export function notice(sentence, ...answers) {
  place().replaceChildren(
    element('p', {}, sentence),
    ...answers.map(([text, act]) => button(text, () => { quiet(); act?.(); })));
  place().hidden = false;
}

/** Whether a sentence is being told. */
export const isTold = (sentence) => !place().hidden && place().firstChild?.textContent === sentence;

/** Takes the notice away. */
export function quiet() {
  place().hidden = true;
  place().replaceChildren();
}
