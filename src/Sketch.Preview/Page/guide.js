// What can be written in a card: each word with its meaning, an example and a picture; a click puts it into the text.
import { button, drawn, element } from './elements.js';
import { get, post } from './server.js';

let asked = null;

/** All words that can be written; they are asked for once, when first needed. */
export function guide() {
  asked ??= get('guide').catch((problem) => { asked = null; throw problem; });
  return asked;
}

/** The parts of a sentence, with what is typed set apart. */
export const withCode = (sentence) => sentence.split('`').map((part, i) => (i % 2 ? element('code', {}, part) : part));

/**
 * The panel with all words, and a field to search them.
 *
 * @param putPiece Lets the user choose where a kind of piece goes.
 * @param file The file and window whose card is shown.
 * @param see Sends the current text.
 * @param apply Applies a change to the text.
 */
export function makeGuide(panel, { putPiece, file, see, textNow, chosenLine, apply, reportProblem }) {
  const search = element('input', { id: 'guide-search', type: 'search', autocomplete: 'off', spellcheck: false });
  const told = element('p', { className: 'empty', role: 'status' });
  const list = element('ul', { className: 'guide' });
  search.addEventListener('input', () => show());
  panel.append(
    element('p', {}, 'New to it? ',
      element('a', { href: 'handbook/guide/index.html', target: '_blank', rel: 'noopener' }, 'The guide'),
      ' has a first card in ten steps, recipes, and answers.'),
    element('p', {}, 'Each word that a card can have, with an example. A piece goes onto the picture, a clause into the line where the '
      + 'caret is.'),
    element('div', { className: 'choices' }, element('label', { htmlFor: 'guide-search' }, 'Search '), search), told, list);
  let rows = [];

  async function put(entry) {
    if (entry.kind === 'piece') {
      await putPiece(entry.word);
      return;
    }
    await see();
    const text = textNow();
    const edit = await post('put-word', { ...file(), word: entry.word, line: chosenLine() });
    if (text === textNow()) apply(edit);
  }

  function row(entry) {
    const { word, kind, means, example, typed, svg } = entry;
    const made = element('li', {},
      ...(svg ? [element('img', { src: drawn(svg), alt: '' })] : [element('span')]),
      element('div', {}, element('h3', {}, element('code', {}, word)), element('p', {}, ...withCode(means)),
        ...(example ? [element('p', {}, 'For example: ', element('code', {}, example))] : []),
        ...(typed || kind === 'piece' ? [button(kind === 'piece' ? `Put ${article(word)} on…` : `Put in ${typed}`,
          () => put(entry).catch(reportProblem))] : [])));
    return { made, words: `${word} ${means} ${example}`.toLowerCase() };
  }

  function show() {
    const wanted = search.value.trim().toLowerCase();
    for (const { made, words } of rows) made.hidden = !words.includes(wanted);
    const found = rows.filter(({ made }) => !made.hidden).length;
    told.textContent = !wanted ? '' : found === 0 ? 'No word fits. Try another, such as mat or foam.' : `${found} of ${rows.length} words`;
  }

  return {
    async refresh() {
      if (rows.length > 0) return;
      rows = (await guide()).entries.map(row);
      list.replaceChildren(...rows.map(({ made }) => made));
      show();
    },
  };
}

const article = (word) => `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
