// The list of what was found, each with its line, its hint and, where the hint is a plain replacement, a button that applies it.
import { button, element, newId } from './elements.js';

const signs = { error: '✕', warning: '▲', note: '●' };
const words = { error: 'Error', warning: 'Warning', note: 'Note' };

export function showFindings(list, findings, { goTo, mend, openFile }) {
  const focused = list.contains(document.activeElement) ? [...list.querySelectorAll('button')].indexOf(document.activeElement) : -1;
  list.replaceChildren(...findings.map((f) => item(f, { goTo, mend, openFile })));
  // A finding that is mended takes its button along; the focus goes on to the next.
  if (focused >= 0) {
    const left = list.querySelectorAll('button');
    (left[Math.min(focused, left.length - 1)] ?? list.closest('section[tabindex]')).focus();
  }
}

function item(f, { goTo, mend, openFile }) {
  // Who comes to a button by Tab hears what it is about.
  const [word, message] = [newId('finding'), newId('finding')];
  const about = { 'aria-describedby': `${word} ${message}` };
  return element('li', { className: f.severity },
    element('p', {},
      element('span', { className: 'sign', 'aria-hidden': 'true' }, signs[f.severity]),
      element('strong', { id: word }, `${words[f.severity]} `),
      f.here
        ? button(`Line ${f.line}`, () => goTo(f.line, f.column), { className: 'link', ...about })
        : button(`${f.file}, line ${f.line}`, () => openFile(f.file, f.line), { className: 'link', ...about }),
      element('span', { id: message }, ` ${f.message}`)),
    ...(f.hint ? [element('p', { className: 'hint' }, f.hint)] : []),
    ...(f.here && f.replacement !== null
      ? [button(f.replacement.trim() ? `Change to ${f.replacement.trim()}` : 'Leave it out', () => mend(f), { className: 'mend', ...about })]
      : []));
}
