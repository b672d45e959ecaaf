// The page: a text, its findings and its results. Everything shown is computed by the program; see server.js.
import { beginCard } from './begin.js';
import { begin, bringBack, tidy } from './commands.js';
import { makeCount } from './count.js';
import { isReported, noLongerTell, notice } from './dialog.js';
import { refuseFiles } from './dropping.js';
import { createEditor } from './editor.js';
import { offer } from './elements.js';
import { OpenFile } from './file.js';
import { makeFindings } from './findings.js';
import { Hand } from './hand.js';
import { latest } from './latest.js';
import { guide, makeGuide } from './guide.js';
import { listen } from './news.js';
import { makePapers, makeStash } from './papers.js';
import { makePicture } from './picture.js';
import { makeSizes, makeTemplates } from './print.js';
import { makePutting } from './putting.js';
import { makeRows } from './rows.js';
import { makeSeeing } from './seeing.js';
import { askOver, get, gone, post, Problem } from './server.js';
import { makeSheets } from './sheets.js';
import { stateOf } from './state.js';
import { makeTabs } from './tabs.js';
import { papersTried, rememberTried } from './tried.js';
import { windowName } from './window.js';

const byId = (id) => document.getElementById(id);
const thisWindow = await windowName();

// What the panels show of the file: the last answer of the program about it, and the papers tried in it.
const work = { sight: null, stash: '', choices: new Map() };
let files = [];
// Whether the program responds, and the files of this window whose edits cannot be written to disk.
let isThere = true;
let inMemoryOnly = [];
// The line of what was chosen last, in the text or in a picture.
let lineNow = 1;

const editor = createEditor(byId('editor'), {
  text: '',
  label: 'Text of the file',
  nonce: document.querySelector('meta[name=style-nonce]').content,
  words: {
    offers: (line, column, signal) => post('offers', { sheet: sheet(), line, column }, signal), samples: () => get('lettering'), guide,
  },
  changed: () => { reportState(); panels.sheets.changed(); see(); keep(); },
  caretMoved: (line) => { lineNow = line; editor.mark(0, 0); picture.mark(line); },
});
const { see, keep, isHandedOver } = makeSeeing({
  ask: askOver({ request: 'see', socket: 'seeing' }),
  sheet,
  wanted: () => ({ unfolded: picture.isUnfolded(), known: picture.known() }),
  shown: show,
  reportProblem,
});
const file = new OpenFile({
  editor, window: thisWindow, see, isHandedOver, opened, listChanged: listFiles, stateChanged: reportState, reportProblem,
});

const asked = () => ({ file: file.name, window: thisWindow });
function sheet() {
  return {
    ...asked(), text: editor.text(), stamp: file.stamp, saved: !file.isChanged, stash: work.stash,
    choices: [...work.choices].map(([role, paper]) => `${role}=${paper}`),
  };
}
const findings = makeFindings(byId('findings'), byId('summary'), { editor, see, fileName: () => file.name, goTo, openFile: open });
const tabs = makeTabs(document.querySelector('[role=tablist]'), byId('panels'), () => refreshTab());
const picked = (line) => { goTo(line); editor.mark(line, line); picture.mark(line); };
const hand = new Hand({
  sheet, picked, goTo, reportProblem,
  textKept: (text) => file.replace(text),
  marked(line) {
    lineNow = line || lineNow;
    // Where the text is above the picture, scrolling to the line would take the picture away from under the hand.
    editor.mark(line, line, { scrolls: !matchMedia('(max-width: 60rem)').matches });
    picture.mark(0);
  },
});
const picture = makePicture(tabs.add('picture', 'Picture'), {
  hand, picked,
  asked: () => see(),
});
const putting = makePutting(picture.tools, {
  asked, see, picture, reportProblem, sight: () => work.sight, textNow: () => editor.text(), chosenLine: () => lineNow,
  apply: applyEdit,
});
const panels = {
  picture,
  papers: makePapers(tabs.add('papers', 'Papers'), {
    work, asked, reportProblem,
    chosen: () => { rememberTried(file.name, work); return see(); },
    copyPicture: (figure) => picture.copyOfFirst(figure),
    stashes: () => files.filter((f) => f.endsWith('.stash')),
    stashBegun: beginStash,
    report: (sentence) => notice(sentence, ['OK', null]),
    textNow: () => editor.text(),
    textKept: (text) => { rememberTried(file.name, work); file.replace(text); },
    chosenPiece: () => work.sight?.pictures?.flatMap((face) => face.pieces).find((piece) => piece.line === lineNow),
    applied: (edit) => editor.apply(edit),
  }),
  stash: makeStash(tabs.add('stash', 'Stash'), {
    asked, see, goTo, reportProblem, textNow: () => editor.text(), textKept: (text) => file.replace(text),
    report: (sentence) => notice(sentence, ['OK', null]),
  }),
  rows: makeRows(tabs.add('rows', 'Table'), { asked, sheet, goTo, reportProblem, textKept: (text) => file.replace(text) }),
  sizes: makeSizes(tabs.add('sizes', 'Sizes'), asked),
  templates: makeTemplates(
    tabs.add('templates', 'Templates'), asked, () => work.sight?.findings.some((f) => f.severity === 'error') ?? true),
  guide: makeGuide(tabs.add('guide', 'What you can write'), {
    file: asked, see, reportProblem, textNow: () => editor.text(), chosenLine: () => lineNow, apply: applyEdit,
    putPiece: (kind) => { tabs.show('picture'); return putting.choose(kind); },
  }),
  sheets: makeSheets(tabs.add('sheets', 'Sheets'), { asked, reportProblem, textNow: () => editor.text(), showFindings: findings.show }),
  count: makeCount(tabs.add('count', 'Count'), { asked, reportProblem }),
};
const tabsFor = {
  none: ['picture'], card: ['picture', 'papers', 'sizes', 'templates', 'guide'], stash: ['stash', 'rows'],
  batch: ['sheets', 'rows', 'count'],
};

function refreshTab() {
  if (file.name) panels[tabs.current()]?.refresh()?.catch(reportProblem);
}

// What is on disk is offered again; anything else may be lost with this window or with the program.
addEventListener('beforeunload', (event) => {
  if (inMemoryOnly.length > 0 || (file.isChanged && !(isThere && isHandedOver()))) event.preventDefault();
});

function show(sight, text) {
  work.sight = sight;
  tabs.offer(tabsFor[sight.kind]);
  if (sight.kind === 'card') picture.show(sight.pictures, sight.title);
  hand.shown();
  byId('printed').textContent = sight.title ?? file.name;
  findings.show(sight, text);
  const title = `${file.isChanged ? '• ' : ''}${sight.title ?? file.name} – Sketch`;
  // The browser passes a title on even if it is the same.
  if (document.title !== title) document.title = title;
  if (tabs.current() !== 'picture') refreshTab();
}

function reportState() {
  // Without a file there is nothing to type into.
  const isOpen = Boolean(file.name);
  byId('editor').inert = !isOpen;
  for (const id of ['undo', 'redo', 'tidy', 'back', 'save']) byId(id).disabled = !isOpen;
  const state = isOpen ? stateOf({ name: file.name, isThere, isChanged: file.isChanged, inMemoryOnly }) : '';
  // An announcement is made once.
  if (byId('state').textContent !== state) byId('state').textContent = state;
}

function reportProblem(problem) {
  if (!(problem instanceof Problem)) throw problem;
  // It is the same with every keystroke after the program has stopped: once is enough.
  if (!isReported(problem.message)) notice(problem.message, ['Dismiss', null]);
}

// The open file.
async function listFiles() {
  const found = await get('files');
  const name = file.name;
  ({ files } = found);
  offer(byId('file'), [
    ...(files.includes(name) ? [] : [[name, name || 'Choose a file']]),
    ...files.map((f) => [f, f]),
    ...(found.all ? [] : [['', 'More files than can be listed; open a folder with fewer']]),
  ], name);
}

const folderOf = (name) => name.slice(0, name.lastIndexOf('/') + 1);

/** The stash beside a card, else any: a card is shown in the papers of the stash unless another choice is made. */
function nearestStash(card) {
  const stashes = files.filter((f) => f.endsWith('.stash'));
  return stashes.find((f) => folderOf(f) === folderOf(card)) ?? stashes[0] ?? '';
}

async function open(name, line = 0) {
  if (!await file.open(name)) byId('file').value = file.name;
  else if (line) goTo(line);
}

/** Puts the caret and the focus into the text, so that the next keystroke goes there. */
function goTo(line, column = 1) {
  editor.goTo(line, column);
  editor.focus();
}

/** Applies a change that the program computed, and goes to the piece that it adds or changes. */
function applyEdit(edit) {
  editor.apply(edit);
  goTo(edit.touched);
  editor.mark(edit.touched, edit.touched);
  picture.mark(edit.touched);
}

function opened() {
  const name = file.name;
  putting.stop();
  scrollTo(0, 0);
  for (const part of document.querySelectorAll('.words, .table, .plan')) part.scrollTo(0, 0);
  picture.clear();
  panels.sheets.clear();
  panels.papers.clear();
  panels.count.clear();
  panels.rows.clear();
  findings.clear();
  work.sight = null;
  const tried = papersTried(name);
  if (tried && (!tried.stash || files.includes(tried.stash))) Object.assign(work, tried);
  else Object.assign(work, { stash: files.includes(work.stash) ? work.stash : nearestStash(name), choices: new Map() });
  location.hash = encodeURIComponent(name);
}

// Many files may change at once.
const together = 50;
const refreshFolder = latest(async () => {
  await listFiles();
  panels.papers.stashChanged();
  panels.sheets.changed();
  await see();
}, together);

/** Called when another program or window changed a file, or any file where the name is empty. */
async function changedOnDisk(name) {
  // A count changes neither pictures nor plans.
  if (name.endsWith('.count')) {
    if (tabs.current() === 'count') refreshTab();
    return;
  }
  if (file.name && (name === file.name || !name)) await file.look();
  if (!name || name !== file.name) await refreshFolder();
}

/** The file that the address names; a malformed address names none. */
function fileOfAddress() {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return '';
  }
}

addEventListener('hashchange', () => {
  const name = fileOfAddress();
  if (name && name !== file.name) open(name);
});

// The toolbar.
const save = () => file.save();

async function beginFile() {
  const name = await begin({ files, beside: file.name, stash: nearestStash(file.name) });
  if (!name) return;
  await open(name);
  if (work.sight?.kind === 'card') editor.focus();
  else {
    tabs.show('rows');
    await panels.rows.refresh();
    panels.rows.focus();
  }
}

async function beginWithLayout() {
  const stash = files.includes(work.stash) ? work.stash : nearestStash(file.name);
  const name = await beginCard({ stash, hasStash: files.some((f) => f.endsWith('.stash')), beside: file.name });
  if (!name) return;
  await listFiles();
  await open(name);
  editor.focus();
}

/** Creates a stash beside the card and uses it for the card. */
async function beginStash() {
  const card = file.name;
  const name = `${folderOf(card)}shelf.stash`;
  await post('begin', { file: name });
  await listFiles();
  notice(`${name} holds a few papers to start from. Change them to what you have. `
    + `A card names papers in its roles; a batch names the file.`,
    ['Open it', () => open(name)], ['Stay here', null]);
  if (card !== file.name) return;
  work.stash = name;
  rememberTried(card, work);
  await see();
}

async function tidyText() {
  const [name, before] = [file.name, editor.text()];
  const text = await tidy(name, before);
  // Edits made in the meantime take precedence over tidying.
  if (name === file.name && before === editor.text() && text !== before) file.replace(text);
}

async function bringTextBack() {
  await file.leftAside();
  const name = file.name;
  const text = await bringBack(name);
  if (text !== null && name === file.name) file.replace(text);
}

const does = {
  'new-card': beginWithLayout, begin: beginFile, undo: () => editor.undo(), redo: () => editor.redo(), tidy: tidyText, back: bringTextBack,
  save,
};
for (const [id, act] of Object.entries(does)) byId(id).addEventListener('click', async () => {
  try {
    await act();
  } catch (problem) {
    reportProblem(problem);
  }
});
byId('file').addEventListener('change', () => {
  const { value } = byId('file');
  if (value) open(value);
  else byId('file').value = file.name;
});
addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  // In a field these keys belong to the field.
  const isElsewhere = !event.target.closest('#editor, input:not([type=radio], [type=checkbox])');
  const act = key === 's' ? save
    : !isElsewhere ? null
      : key === 'y' || (key === 'z' && event.shiftKey) ? editor.redo
        : key === 'z' ? editor.undo : null;
  if (!act) return;
  event.preventDefault();
  act();
});

refuseFiles();

// The height of the toolbar: what is beneath it keeps that much room.
const top = document.querySelector('.top');
new ResizeObserver(() => document.documentElement.style.setProperty('--top', `${top.offsetHeight}px`)).observe(top);
tabs.offer(tabsFor.none);

listen(thisWindow, {
  changed: (name) => changedOnDisk(name).catch(reportProblem),
  inMemoryOnly: (names) => { inMemoryOnly = names; reportState(); },
  lost: () => { isThere = false; reportState(); },
  stopped: () => reportProblem(new Problem(gone, 0)),
  found: () => { isThere = true; reportState(); noLongerTell(gone); see(); },
  refused: (sentence) => notice(sentence, ['Dismiss', null]),
});
await listFiles();
const first = fileOfAddress() || files.find((f) => f.endsWith('.card')) || files[0];
if (first) await open(first);
else reportState();
if (!first) notice('There is no card in this folder yet.', ['Create one', () => byId('new-card').click()]);
