// The page: a text, what was found in it, and what it comes to. Everything shown is worked out by the program; see server.js.
import { createEditor } from './editor.js';
import { dialog, isTold, notice, quiet } from './dialog.js';
import { button, element } from './elements.js';
import { showFindings } from './findings.js';
import { makePapers, makeShelf } from './papers.js';
import { listen } from './news.js';
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
    textNow: () => editor.text(),
    textKept: (text) => { editor.replaceAll(text); tellState(); see(); },
  }),
  shelf: makeShelf(tabs.add('shelf', 'Shelf'), { asked, goTo: (line) => editor.goTo(line, 1) }),
  sizes: makeSizes(tabs.add('sizes', 'Sizes'), asked),
  templates: makeTemplates(tabs.add('templates', 'Templates'), asked, () => work.sight?.findings.some((f) => f.severity === 'error') ?? true),
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

// The findings shown, and the text in which they were found.
let shownFindings = [];
let foundIn = '';

/** Mends by a hint. A key may have come in since the button was shown, so the finding is looked up anew in the text as it stands. */
async function mend({ code, message, replacement }) {
  await see();
  const now = shownFindings.find((f) => f.here && f.code === code && f.message === message && f.replacement === replacement);
  if (now && editor.text() === foundIn) editor.apply({ ...now, text: replacement });
}

function showFound({ findings, summary }, text = editor.text()) {
  foundIn = text;
  shownFindings = findings;
  // Most keys find nothing new; a screen reader is not told the same again.
  const now = JSON.stringify([work.file, findings]);
  if (now === lastFound) return;
  lastFound = now;
  editor.showFindings(findings.filter((f) => f.here));
  byId('summary').textContent = summary;
  showFindings(byId('findings'), findings, {
    goTo: (line, column) => editor.goTo(line, column),
    mend,
    openFile: (file, line) => open(file, line),
  });
}

const isChanged = () => Boolean(work.file) && editor.text() !== work.saved;

function tellState() {
  // Without a file there is nothing that typing could go into.
  byId('editor').inert = !work.file;
  for (const id of ['undo', 'redo', 'tidy', 'back', 'save']) byId(id).disabled = !work.file;
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
let saving = null;

/** Saves; a second call while one is under way waits for that one. */
function save() {
  saving ??= saveNow().finally(() => { saving = null; });
  return saving;
}

async function saveNow() {
  const [file, text] = [work.file, editor.text()];
  if (!file || (text === work.saved && work.stamp)) return;
  try {
    const { stamp } = await post('save', { file, window: name, text, stamp: work.stamp });
    if (file !== work.file) return;
    Object.assign(work, { saved: text, stamp });
    quiet();
    tellState();
    await see();
    await listFiles();
  } catch (problem) {
    if (problem.status === 409 && file === work.file) {
      if (problem.answer.stamp) askWhose(problem.answer, work.stamp);
      else tellGone();
    }
    else tellProblem(problem);
  }
}

/** The file is no longer there: the text stays as typing that is not saved. */
function tellGone() {
  Object.assign(work, { saved: '', stamp: '' });
  notice(`${work.file} is no longer in the folder. Save puts it back as it stands here.`, ['Put this away', null]);
  tellState();
  return see();
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
    panels.sheets.changed();
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
    await tellGone();
    await listFiles();
    return;
  }
  if (there.stamp === work.stamp) return;
  quiet();
  if (isChanged() && editor.text() !== there.text) {
    askWhose(there, work.stamp);
    return;
  }
  Object.assign(work, { saved: there.text, stamp: there.stamp });
  if (editor.text() !== there.text) editor.replaceAll(there.text);
  tellState();
  await see();
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
  const ending = document.querySelector('input[name=kind]:checked').value;
  const file = /\.(card|stash|batch)$/i.test(field.value.trim()) ? field.value.trim() : `${field.value.trim()}.${ending}`;
  try {
    await post('begin', { file, window: name });
    await open(file);
    editor.focus();
  } catch (problem) {
    tellProblem(problem);
  }
}

async function tidy() {
  const [file, before] = [work.file, editor.text()];
  try {
    const { text } = await post('tidy', { file, text: before });
    // What was typed meanwhile is worth more than tidiness.
    if (file === work.file && before === editor.text() && text !== before) {
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
/** The file that the address names; an address that somebody spoilt names none. */
function fileOfAddress() {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return '';
  }
}

addEventListener('hashchange', () => {
  const file = fileOfAddress();
  if (file && file !== work.file) open(file);
});

listen(name, changedOnDisk);
await listFiles();
const first = fileOfAddress() || files.find((f) => f.endsWith('.card')) || files[0];
if (first) await open(first);
else tellState();
if (!first) notice('There is no card in this folder yet.', ['Begin one', begin]);
