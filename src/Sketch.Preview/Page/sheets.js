// The sheets of a batch: the progress of the search, then shortages and supplies, diagrams and cuts; and the same for print.
import { button, counted, element, markup } from './elements.js';
import { asProblem, post, send } from './server.js';

const introduction = 'The fewest sheets for the whole batch, how to cut them, the supplies and the shortages. '
  + 'The plan uses the saved cards and stash.';
const unplanned = 'There is no plan yet: fix the problems listed below the text, then plan again.';

export function makeSheets(panel, { asked, reportProblem, textNow, showFindings }) {
  // The running search, and whether the files have changed since it or the last one began.
  let search = null;
  let isOutdated = false;
  const start = button('Plan the sheets', () => work(false), { className: 'chief' });
  const rest = button('Plan what is left to cut', () => work(true));
  const easy = element('input', { type: 'checkbox' });
  const enough = button('Use the best so far', () => post('enough', search?.of ?? asked()).catch(reportProblem), { hidden: true });
  const outdated = element('p', { className: 'empty', hidden: true }, 'The text has changed: plan the sheets again.');
  const progress = makeProgress();
  const reported = element('p', { role: 'status' });
  const links = element('p', { className: 'choices', hidden: true });
  const plan = element('div', { className: 'plan', tabIndex: 0, role: 'region', 'aria-label': 'Plan' });
  panel.append(element('p', {}, introduction), element('div', { className: 'choices' }, start, rest, enough),
    element('label', { className: 'check' }, easy, ' Use an extra sheet of a paper where that saves a lot of trimming'),
    outdated, reported, progress.part, links, plan);

  function empty() {
    plan.replaceChildren();
    progress.clear();
    reported.textContent = '';
    links.hidden = outdated.hidden = true;
  }

  // What is left according to the count, or all.
  async function work(left) {
    if (search) return;
    const mine = { of: asked(), text: textNow(), end: new AbortController() };
    search = mine;
    isOutdated = false;
    empty();
    // Not disabled, which would lose the focus.
    start.ariaDisabled = rest.ariaDisabled = 'true';
    enough.hidden = false;
    reported.textContent = 'Looking for the fewest sheets …';
    try {
      const response = await send('plan', { ...mine.of, left, easy: easy.checked }, mine.end.signal);
      await readLines(response.body, line => (line.done ? finish(line, mine) : progress.report(line)));
    } catch (reason) {
      if (search !== mine) return;
      empty();
      reportProblem(asProblem(reason));
    } finally {
      if (search === mine) end();
    }
  }

  function end() {
    search = null;
    start.ariaDisabled = rest.ariaDisabled = null;
    if (document.activeElement === enough) start.focus();
    enough.hidden = true;
  }

  function finish({ html, pages, messagePages, ...found }, { of, text }) {
    progress.clear();
    // Findings of an earlier text have their places there.
    if (textNow() === text) showFindings(found, text);
    outdated.hidden = html === null || !isOutdated;
    reported.textContent = html === null ? unplanned : 'Done. Shortages come first, then the sheets to cut.';
    if (html === null) return;
    plan.replaceChildren(markup(html));
    links.replaceChildren(...outputsOf(of, pages, messagePages));
    links.hidden = false;
  }

  return {
    refresh() {},
    clear() {
      const before = search;
      end();
      before?.end.abort();
      empty();
    },
    changed() {
      isOutdated = true;
      outdated.hidden = plan.childElementCount === 0;
    },
  };
}

/** The progress of the search, with a line for each paper. */
function makeProgress() {
  const part = element('div', { className: 'progress' });
  const lineOf = new Map();
  return {
    part,
    clear() {
      lineOf.clear();
      part.replaceChildren();
    },
    report({ paper, sheets, bound }) {
      if (!lineOf.has(paper)) {
        lineOf.set(paper, element('p'));
        part.append(lineOf.get(paper));
      }
      lineOf.get(paper).textContent = progressOf(paper, sheets, bound);
    },
  };
}

export const progressOf = (paper, sheets, bound) =>
  `${paper}: ${counted(sheets, 'sheet')}${sheets <= bound ? ', the fewest possible' : ` so far, at least ${bound}`}`;

/** Links to the files of a plan. */
function outputsOf(batch, pages, messagePages) {
  const address = (name) => `${name}?${new URLSearchParams(batch)}`;
  const pdf = (name, label, count, className = '') => element('span', {},
    element('a', { href: address(name), target: '_blank', rel: 'noopener', className }, label), ` ${counted(count, 'page')}`);
  return [
    pdf('workbook.pdf', 'Open the workbook (PDF)', pages, 'chief'),
    ...(messagePages > 0 ? [pdf('messages.pdf', 'Messages to print (PDF)', messagePages)] : []),
    element('a', { href: address('cuts.csv'), download: 'cuts.csv' }, 'Cut list for a spreadsheet'),
    element('a', { href: address('left.stash'), download: 'left.stash' }, 'Remaining stash (stash file)'),
  ];
}

/** Passes on each line of a streamed answer as it comes. */
async function readLines(body, pass) {
  for await (const line of lines(body)) pass(line);
}

/** The lines of a streamed answer, each parsed as JSON. */
export async function* lines(body) {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      const parts = (rest + value).split('\n');
      rest = parts.pop();
      for (const part of parts) yield JSON.parse(part);
    }
  } finally {
    // To stop reading makes the program stop searching; a stream that was cut off rejects this, which need not be reported.
    reader.cancel().catch(() => {});
  }
}
