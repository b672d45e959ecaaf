// The sheets of a batch: how far the search has come, then shortages and supplies, diagrams and cuts; and the same to print.
import { button, counted, element, markup } from './elements.js';
import { asProblem, post, send } from './server.js';

export function makeSheets(panel, { asked, reportProblem, textNow, showFindings }) {
  // The search that is under way, and whether the files changed since it or the last one began.
  let search = null;
  let isOutdated = false;
  const start = button('Plan the sheets', work, { className: 'chief' });
  const enough = button('Use the best so far', () => post('enough', search?.of ?? asked()).catch(reportProblem), { hidden: true });
  const outdated = element('p', { className: 'empty', hidden: true }, 'The text has changed: plan the sheets again.');
  const progress = element('div', { className: 'progress' });
  const reported = element('p', { role: 'status' });
  const links = element('p', { className: 'choices', hidden: true });
  const plan = element('div', { className: 'plan', tabIndex: 0, role: 'region', 'aria-label': 'Plan' });
  panel.append(
    element('p', {}, 'The fewest sheets for the whole batch, how to cut them, the supplies and the shortages. '
      + 'The plan uses the saved cards and stash.'),
    element('div', { className: 'choices' }, start, enough), outdated, reported, progress, links, plan);

  async function work() {
    if (search) return;
    const mine = { of: asked(), text: textNow(), end: new AbortController() };
    search = mine;
    isOutdated = false;
    // Not disabled, which would drop the focus.
    start.ariaDisabled = 'true';
    enough.hidden = false;
    outdated.hidden = links.hidden = true;
    plan.replaceChildren();
    progress.replaceChildren();
    reported.textContent = 'Looking for the fewest sheets …';
    const papers = new Map();
    try {
      const response = await send('plan', mine.of, mine.end.signal);
      for await (const line of lines(response.body)) {
        if (line.done) finish(line, mine);
        else report(papers, line);
      }
    } catch (reason) {
      if (search !== mine) return;
      progress.replaceChildren();
      reported.textContent = '';
      reportProblem(asProblem(reason));
    } finally {
      if (search === mine) rest();
    }
  }

  function rest() {
    search = null;
    start.ariaDisabled = null;
    if (document.activeElement === enough) start.focus();
    enough.hidden = true;
  }

  function report(papers, { paper, sheets, bound }) {
    if (!papers.has(paper)) {
      const line = element('p');
      papers.set(paper, line);
      progress.append(line);
    }
    papers.get(paper).textContent = sheets <= bound
      ? `${paper}: ${counted(sheets, 'sheet')}, and no fewer will do` : `${paper}: ${counted(sheets, 'sheet')} so far, at least ${bound}`;
  }

  function finish({ html, ...found }, { of, text }) {
    progress.replaceChildren();
    // What was found in an earlier text has its places there.
    if (textNow() === text) showFindings(found, text);
    outdated.hidden = html === null || !isOutdated;
    if (html === null) {
      reported.textContent = 'There is no plan yet: fix the problems listed below the text, then plan again.';
      return;
    }
    reported.textContent = 'Done. Shortages come first, then the sheets to cut.';
    plan.replaceChildren(markup(html));
    const address = (name) => `${name}?${new URLSearchParams(of)}`;
    links.replaceChildren(
      element('a', { href: address('booklet.pdf'), target: '_blank', rel: 'noopener', className: 'chief' }, 'Open the booklet (PDF)'),
      element('a', { href: address('cuts.csv'), download: 'cuts.csv' }, 'Cut list for a spreadsheet'),
      element('a', { href: address('left.stash'), download: 'left.stash' }, 'Remaining stash (stash file)'));
    links.hidden = false;
  }

  return {
    refresh() {},
    clear() {
      const before = search;
      rest();
      before?.end.abort();
      plan.replaceChildren();
      progress.replaceChildren();
      reported.textContent = '';
      links.hidden = outdated.hidden = true;
    },
    changed() {
      isOutdated = true;
      outdated.hidden = plan.childElementCount === 0;
    },
  };
}

async function* lines(body) {
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
    // Whoever stops listening lets the program stop searching; a stream that has broken off refuses this, and need not be reported.
    reader.cancel().catch(() => {});
  }
}
