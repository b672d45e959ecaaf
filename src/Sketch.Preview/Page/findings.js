// The list of findings, each with its line, its hint and, where the hint is a simple replacement, a button that applies it.
import { button, element, newId } from './elements.js';

const signs = { error: '✕', warning: '▲', note: '●' };
const words = { error: 'Error', warning: 'Warning', note: 'Note' };

/**
 * @param goTo Goes to a line and column of the text.
 * @param openFile Opens another file at a line.
 */
export function makeFindings(list, summaryPlace, { editor, see, fileName, goTo, openFile }) {
  let lastReported = '';

  // The findings shown, and the text in which they were found.
  let found = [];
  let foundIn = '';

  /**
   * Applies a hint. The text may have changed since the button was shown, so the finding is looked up again in the current text. Its
   * message differs if it quotes a word that has been completed in the meantime.
   */
  async function fix({ code, message, replacement }) {
    await see();
    const same = found.filter((f) => f.here && f.code === code && f.replacement === replacement);
    const now = same.find((f) => f.message === message) ?? (same.length === 1 ? same[0] : null);
    if (now && editor.text() === foundIn) editor.apply({ ...now, text: replacement });
  }

  function show({ findings, summary }, text) {
    foundIn = text;
    found = findings;
    // Most keystrokes cause no new findings; a screen reader does not announce the same ones again.
    const now = JSON.stringify([fileName(), findings]);
    if (now === lastReported) return;
    lastReported = now;
    editor.showFindings(findings.filter((f) => f.here));
    summaryPlace.textContent = summary;
    const focused = list.contains(document.activeElement) ? [...list.querySelectorAll('button')].indexOf(document.activeElement) : -1;
    list.replaceChildren(...findings.map((f) => item(f, { goTo, fix, openFile })));
    // The button of a fixed finding disappears; the focus moves to the next.
    if (focused >= 0) {
      const left = list.querySelectorAll('button');
      (left[Math.min(focused, left.length - 1)] ?? list.closest('section[tabindex]')).focus();
    }
  }

  return {
    show,
    /** Clears the findings, since another text is opened. */
    clear() { lastReported = ''; },
  };
}

function item(f, { goTo, fix, openFile }) {
  // A user who reaches a button by Tab hears its finding.
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
      ? [button(fixingOf(f.replacement.trim()), () => fix(f), { className: 'fix', ...about })]
      : []));
}

function fixingOf(replacement) {
  if (!replacement) return 'Remove it';
  // A replacement with a line of its own goes before the existing text.
  return replacement.includes('\n') ? `Insert ${replacement.slice(0, replacement.indexOf('\n'))}` : `Change to ${replacement}`;
}
