// The page: a text, what was found in it, and what it comes to. Everything shown is worked out by the program; see server.js.
import { createEditor } from './editor.js';
import { dialog, isTold, notice, quiet } from './dialog.js';
import { button, element } from './elements.js';
import { showFindings } from './findings.js';
import { makePapers, makeShelf } from './papers.js';
import { makePicture } from './picture.js';
import { makeSizes, makeTemplates } from './print.js';
import { get, post, Problem } from './server.js';
import { makeSheets } from './sheets.js';
import { makeTabs } from './tabs.js';
import { windowName } from './window.js';

const byId = (id) => document.getElementById(id);
const name = await windowName();

// What is open: the file, what the disk holds of it (text and stamp), and what is chosen for it.
const work = { file: '', saved: '', stamp: '', kind: '', stash: '', choices: new Map() };
let files = [];

const editor = createEditor(byId('editor'), {
  text: '',
  label: 'Text of the file',
  nonce: document.querySelector('meta[name=style-nonce]').content,
  words: await get('words'),
  changed: () => { tellState(); panels.sheets.changed(); see(); },
  caretMoved: (line) => picture.mark(line),
});

const asked = () => ({ file: work.file, window: name });
const tabs = makeTabs(document.querySelector('[role=tablist]'), byId('panels'), () => refreshTab());
const picture = makePicture(tabs.add('picture', 'Picture'), {
  picked: (line) => { editor.goTo(line, 1); editor.mark(line, line); picture.mark(line); },
  asked: () => see(),
});
const panels = {
  papers: makePapers(tabs.add('papers', 'Papers'), {
    work, asked, tellProblem,
    chosen: () => see(),
    copyPicture: (figure) => picture.copyOfFirst(figure),
    stashes: () => files.filter((f) => f.endsWith('.stash')),
    tell: (sentence) => notice(sentence, ['Good', null]),
    textKept: (text) => { editor.replaceAll(text); tellState(); see(); },
  }),
  shelf: makeShelf(tabs.add('shelf', 'Shelf'), { asked, goTo: (line) => editor.goTo(line, 1) }),
  sizes: makeSizes(tabs.add('sizes', 'Sizes'), asked),
  templates: makeTemplates(tabs.add('templates', 'Templates'), asked),
  sheets: makeSheets(tabs.add('sheets', 'Sheets'), { asked, tellProblem, showFindings: showFound }),
};
const tabsFor = { card: ['picture', 'papers', 'sizes', 'templates'], stash: ['shelf'], batch: ['sheets'] };

function refreshTab() {
  if (work.file) panels[tabs.current()]?.refresh()?.catch(tellProblem);
}

// Seeing: one request at a time, and the latest text as soon as the one before is drawn.
let seeing = null;
let isBehind = false;

/** Sends the text as it stands; settles when the program has it and all that came after. */
function see() {
  isBehind = true;
  seeing ??= look().finally(() => { seeing = null; });
  return seeing;
}

async function look() {
  while (isBehind && work.file) {
    isBehind = false;
    const [file, text] = [work.file, editor.text()];
    try {
      const sight = await post('see', {
        file, window: name, text, stamp: work.stamp, saved: text === work.saved, stash: work.stash,
        choices: [...work.choices].map(([role, paper]) => `${role}=${paper}`),
        unfolded: picture.isUnfolded(), known: picture.known(),
      });
      isGone = false;
      if (file === work.file) show(sight, text);
    } catch (problem) {
      isGone = problem.status === 0;
      tellProblem(problem);
    }
  }
}

// Whether the program has stopped: then typing is nowhere but in this window.
let isGone = false;
addEventListener('beforeunload', (event) => { if (isGone && isChanged()) event.preventDefault(); });

function show(sight, text) {
  work.kind = sight.kind;
  work.sight = sight;
  tabs.offer(tabsFor[sight.kind]);
  if (sight.kind === 'card') picture.show(sight.pictures);
  showFound(sight, text);
  document.title = `${isChanged() ? '• ' : ''}${sight.title ?? work.file} – Sketch`;
  if (tabs.current() !== 'picture') refreshTab();
}

let lastFound = '';

// The text in which the findings shown were found.
let foundIn = '';

function showFound({ findings, summary }, text = editor.text()) {
  foundIn = text;
  // Most keys find nothing new; a screen reader is not told the same again.
  const now = JSON.stringify([work.file, findings]);
  if (now === lastFound) return;
  lastFound = now;
  editor.showFindings(findings.filter((f) => f.here));
  byId('summary').textContent = summary;
  showFindings(byId('findings'), findings, {
    goTo: (line, column) => editor.goTo(line, column),
    // A key later its place may be another; what is found then is about to be shown.
    apply: (edit) => { if (editor.text() === foundIn) editor.apply(edit); },
    openFile: (file, line) => open(file, line),
  });
}

const isChanged = () => Boolean(work.file) && editor.text() !== work.saved;

function tellState() {
  byId('state').textContent = !work.file ? '' : isChanged() ? 'Not saved yet' : 'Saved';
}

function tellProblem(problem) {
  if (!(problem instanceof Problem)) throw problem;
  // With every key after the program has stopped it is the same: once is enough.
  if (!isTold(problem.message)) notice(problem.message, ['Put this away', null]);
}

// Opening.
async function listFiles() {
  ({ files } = await get('files'));
  byId('file').replaceChildren(
    ...(work.file && files.includes(work.file) ? [] : [element('option', { value: work.file }, work.file || 'Choose a file')]),
    ...files.map((f) => element('option', { value: f }, f)));
  byId('file').value = work.file;
}

/** The stash beside a card, else any: a card is shown in the papers of the shelf unless another wish is said. */
function nearestStash(file) {
  const stashes = files.filter((f) => f.endsWith('.stash'));
  const folder = file.slice(0, file.lastIndexOf('/') + 1);
  return stashes.find((f) => f.slice(0, f.lastIndexOf('/') + 1) === folder) ?? stashes[0] ?? '';
}

async function open(file, line = 0) {
  // The last keys in the file that is left have to reach the program first.
  if (work.file) await see();
  let found;
  try {
    found = await get('text', { file, window: name });
  } catch (problem) {
    tellProblem(problem);
    byId('file').value = work.file;
    return;
  }
  quiet();
  picture.clear();
  panels.sheets.clear();
  panels.papers.clear();
  if (!files.includes(work.stash)) work.stash = nearestStash(file);
  Object.assign(work, { file, saved: found.text, stamp: found.stamp, kind: '', choices: new Map() });
  location.hash = encodeURIComponent(file);
  editor.open(found.text);
  lastFound = '';
  if (found.unsaved?.own) takeUnsaved(found.unsaved);
  else if (found.unsaved) offerUnsaved(found.unsaved);
  await listFiles();
  tellState();
  await see();
  if (line) editor.goTo(line, 1);
}

function takeUnsaved(unsaved) {
  editor.replaceAll(unsaved.text);
  if (unsaved.stamp !== work.stamp) {
    // The file was changed after this was typed: saving would run into that, so it is asked now.
    askWhose({ text: work.saved, stamp: work.stamp }, unsaved.stamp);
  }
  tellState();
}

function offerUnsaved(unsaved) {
  const when = new Date(unsaved.time).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
  notice(`There is typing of ${when} in this file that was never saved.`,
    ['Take it up again', async () => { takeUnsaved(unsaved); await see(); await forget(unsaved.window, false); }],
    ['Leave it aside', () => forget(unsaved.window, true)]);
}

const forget = (window, keep) => post('forget', { file: work.file, window, keep }).catch(tellProblem);

// Saving.
async function save() {
  if (!work.file) return;
  const [file, text] = [work.file, editor.text()];
  try {
    const { stamp } = await post('save', { file, window: name, text, stamp: work.stamp });
    if (file !== work.file) return;
    Object.assign(work, { saved: text, stamp });
    quiet();
    tellState();
    await see();
    await listFiles();
  } catch (problem) {
    if (problem.status === 409 && file === work.file) askWhose(problem.answer, work.stamp);
    else tellProblem(problem);
  }
}

/** The file holds something else than this window knows, and this window has typing of its own: the person decides. */
function askWhose(theirs, known) {
  work.stamp = known;
  notice('Another program or window has changed this file while you were typing. Nothing of either is lost: which text shall stand here?',
    ['Keep my text', () => { Object.assign(work, { stamp: theirs.stamp, saved: theirs.text }); tellState(); see(); }],
    ['Take the other text', () => {
      Object.assign(work, { stamp: theirs.stamp, saved: theirs.text });
      editor.replaceAll(theirs.text);
      tellState();
      see();
    }]);
}

async function changedOnDisk(changed) {
  if (changed && changed !== work.file) {
    if (/\.(card|stash|batch)$/i.test(changed) && !files.includes(changed)) await listFiles();
    panels.papers.shelfChanged();
    see();
    return;
  }
  if (!work.file) return listFiles();
  const { file } = work;
  let there = null;
  try {
    there = await get('text', { file, window: name });
  } catch (problem) {
    if (problem.status !== 404) return;
  }
  if (file !== work.file) return;
  // Where there is typing in a file that is gone, it comes without a stamp.
  if (!there?.stamp) {
    Object.assign(work, { saved: '', stamp: '' });
    notice(`${file} is no longer in the folder. Save puts it back as it stands here.`, ['Put this away', null]);
    tellState();
    await listFiles();
    return;
  }
  if (there.stamp === work.stamp) return;
  if (isChanged() && editor.text() !== there.text) {
    askWhose(there, work.stamp);
    return;
  }
  Object.assign(work, { saved: there.text, stamp: there.stamp });
  if (editor.text() !== there.text) editor.replaceAll(there.text);
  tellState();
  await see();
}

function listen() {
  const news = new EventSource(`events?${new URLSearchParams({ window: name })}`);
  let isLost = false;
  news.addEventListener('changed', (event) => changedOnDisk(event.data));
  news.addEventListener('error', () => { isLost = true; });
  news.addEventListener('open', () => { if (isLost) { isLost = false; changedOnDisk(''); } });
}

// Beginning, tidying, bringing back.
async function begin() {
  const field = element('input', { id: 'new-name', required: true, value: 'new.card', autocomplete: 'off' });
  const kinds = [['card', 'A card'], ['stash', 'A stash: what is on the shelf'], ['batch', 'A batch: which cards, and how many']].map(([kind, text], i) =>
    element('label', { className: 'check' }, element('input', {
      type: 'radio', name: 'kind', value: kind, checked: i === 0,
      onchange: () => { field.value = `${field.value.replace(/\.[^.]*$/, '')}.${kind}`; },
    }), ` ${text}`));
  const answer = await dialog('Begin a new file',
    [element('fieldset', {}, element('legend', {}, 'What shall it be?'), ...kinds), element('label', { htmlFor: 'new-name' }, 'Name of the file'), field],
    [['Begin it', 'yes'], ['Leave it', '']]);
  if (answer !== 'yes') return;
  try {
    await post('begin', { file: field.value.trim(), window: name });
    await open(field.value.trim());
    editor.focus();
  } catch (problem) {
    tellProblem(problem);
  }
}

async function tidy() {
  try {
    const { text } = await post('tidy', { file: work.file, text: editor.text() });
    if (text !== editor.text()) {
      editor.replaceAll(text);
      tellState();
      see();
    }
  } catch (problem) {
    tellProblem(problem);
  }
}

async function bringBack() {
  const { earlier } = await get('earlier', { file: work.file });
  if (earlier.length === 0) {
    await dialog('Earlier texts', [element('p', {}, 'None yet: the first is kept when you save over it.')], [['Good', 'yes']]);
    return;
  }
  const list = element('select', { size: Math.min(8, Math.max(2, earlier.length)), id: 'earlier-list' },
    ...earlier.map((e, i) => element('option', { value: e.name, selected: i === 0 }, new Date(e.time).toLocaleString([], { dateStyle: 'full', timeStyle: 'medium' }))));
  const answer = await dialog('Earlier texts',
    [element('label', { htmlFor: 'earlier-list' }, 'The text as it was until you saved over it at'), list,
      element('p', {}, 'It is put into the page and not saved; Undo takes it away again.')],
    [['Bring it back', 'yes'], ['Leave it', '']]);
  if (answer !== 'yes') return;
  const { text } = await get('earlier-text', { file: work.file, name: list.value });
  editor.replaceAll(text);
  tellState();
  see();
}

byId('file').addEventListener('change', () => open(byId('file').value));
byId('begin').addEventListener('click', begin);
byId('undo').addEventListener('click', () => editor.undo());
byId('redo').addEventListener('click', () => editor.redo());
byId('tidy').addEventListener('click', tidy);
byId('back').addEventListener('click', () => bringBack().catch(tellProblem));
byId('save').addEventListener('click', save);
addEventListener('keydown', (event) => {
  if ((event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 's') {
    event.preventDefault();
    save();
  }
});
addEventListener('hashchange', () => {
  const file = decodeURIComponent(location.hash.slice(1));
  if (file && file !== work.file) open(file);
});

listen();
await listFiles();
const first = decodeURIComponent(location.hash.slice(1)) || files.find((f) => f.endsWith('.card')) || files[0];
if (first) await open(first);
else notice('There is no card in this folder yet.', ['Begin one', begin]);
