// The file that is open in this window: what the disk holds of it, what is typed and not saved, and whose text stands when the two part.
import { notice, quiet } from './dialog.js';
import { latest } from './latest.js';
import { get, post } from './server.js';

/**
 * @param editor Holds the text.
 * @param window The name of this window.
 * @param see Sends the text as it stands; settles when the program has it, or it could not be sent.
 * @param isHandedOver Whether the program has the text as it stands.
 * @param opened Called when another file is open, before its text is shown.
 * @param listChanged Called when files may have come or gone.
 * @param stateChanged Called when the text, or what is known of the disk, changed.
 */
export function makeFile({ editor, window, see, isHandedOver, opened, listChanged, stateChanged, reportProblem }) {
  let name = '';
  // What the disk holds of it; the stamp is that of the bytes, and empty when there is no file.
  let saved = '';
  let stamp = '';
  let saving = null;
  let openings = 0;
  let forgetting = Promise.resolve();
  let answered = () => {};

  // Whether the file could be read when it was last looked at.
  let isReadable = false;

  // A file that is not there, or cannot be read, holds no text, not even an empty one.
  const isChanged = () => Boolean(name) && (isTyped() || !stamp || !isReadable);
  const isTyped = () => editor.text() !== saved;

  /** Asks or tells something of the file as it is on the disk; only the latest stands. */
  function report(sentence, ...answers) {
    answered();
    answered = notice(sentence, ...answers);
  }

  /** Opens a file; false when it cannot be, or another was opened meanwhile. */
  async function open(file) {
    openings += 1;
    const mine = openings;
    let found;
    try {
      found = await get('text', { file, window });
    } catch (problem) {
      reportProblem(problem);
      return false;
    }
    // The last keys in the file that is left have to reach the program first; where they cannot, the file stays open.
    if (name) await see();
    if (mine !== openings || (isChanged() && !isHandedOver())) return false;
    quiet();
    [name, saved, stamp, isReadable] = [file, found.text, found.stamp, !found.problem];
    opened();
    editor.open(found.text, file.split('.').at(-1).toLowerCase());
    // What is there and cannot be read has no text; typing in it is shown all the same.
    if (found.problem) report(found.problem, ['Dismiss', null]);
    if (found.unsaved?.own) takeUp(found.unsaved);
    else if (found.unsaved) offer(found.unsaved);
    await listChanged();
    stateChanged();
    await see();
    return true;
  }

  function replace(text) {
    editor.replaceAll(text);
    stateChanged();
    return see();
  }

  function takeUp(unsaved) {
    editor.replaceAll(unsaved.text);
    // Where the file was changed after this was typed, saving would run into that, so it is asked now.
    if (!stamp) reportGone();
    else if (unsaved.stamp !== stamp) askWhose(
      { text: saved, stamp }, unsaved.stamp, 'This file has been saved with different text since then.');
    stateChanged();
  }

  function offer(unsaved) {
    const when = new Date(unsaved.time).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
    const file = name;
    const forget = (keep) => {
      forgetting = post('forget', { file, window: unsaved.window, keep }).catch(reportProblem);
      return forgetting;
    };
    notice(`This file has unsaved text from ${when}.`,
      ['Restore it', async () => { takeUp(unsaved); await see(); if (isHandedOver()) await forget(false); }],
      ['Discard it', () => forget(true)]);
  }

  async function saveNow() {
    const [file, text] = [name, editor.text()];
    if (!isChanged()) return;
    try {
      const answer = await post('save', { file, window, text, stamp });
      if (file !== name) return;
      [saved, stamp, isReadable] = [text, answer.stamp, true];
      answered();
      stateChanged();
      await see();
      await listChanged();
    } catch (problem) {
      if (problem.status !== 409 || file !== name) reportProblem(problem);
      else if (problem.answer.stamp) askWhose(problem.answer, stamp);
      else await reportGone();
    }
  }

  /** The file is no longer there: the text stays as typing that is not saved. */
  function reportGone() {
    [saved, stamp] = ['', ''];
    report(`${name} is no longer in the folder. Save puts this text back.`, ['Dismiss', null]);
    stateChanged();
    return see();
  }

  /** The file holds something else than this window knows, and this window has typing of its own: the person decides. */
  function askWhose(theirs, known, why = 'Another program or window has changed this file while you were typing.') {
    const know = () => { [saved, stamp] = [theirs.text, theirs.stamp]; };
    stamp = known;
    report(`${why} Nothing of either is lost: which text shall stand here?`,
      ['Keep my text', () => { know(); stateChanged(); see(); }],
      ['Use the other text', () => takeTheirs().catch(reportProblem)]);

    async function takeTheirs() {
      const file = name;
      // What is typed here goes among the earlier texts: Undo has it only as long as this window is open.
      await see();
      if (!isHandedOver()) return;
      await post('forget', { file, window, keep: true });
      if (file !== name) return;
      know();
      await replace(theirs.text);
    }
  }

  /** Compares with the disk, where another program or window has changed this file. */
  async function look() {
    await saving;
    const [file, known] = [name, stamp];
    let there = null;
    try {
      there = await get('text', { file, window });
    } catch (problem) {
      if (problem.status !== 404) {
        reportProblem(problem);
        // While the program does not answer nothing is known of the file.
        if (file === name && problem.status !== 0) await cannotBeRead();
        return;
      }
    }
    if (file !== name) return;
    // What was saved meanwhile makes the answer old.
    if (saving || stamp !== known) {
      await look();
      return;
    }
    // Where there is typing in a file that is gone, it comes without a stamp.
    if (!there?.stamp) {
      if (stamp) await reportGone();
      await listChanged();
      return;
    }
    if (there.problem) {
      if (there.stamp !== stamp) report(there.problem, ['Dismiss', null]);
      await cannotBeRead();
      return;
    }
    if (there.stamp === stamp) {
      if (!isReadable) await canBeRead();
      return;
    }
    isReadable = true;
    answered();
    if (isTyped() && editor.text() !== there.text) {
      askWhose(there, stamp);
      return;
    }
    [saved, stamp] = [there.text, there.stamp];
    if (editor.text() !== there.text) editor.replaceAll(there.text);
    stateChanged();
    await see();
  }

  /** The text is in this window, and whether the disk has it nobody can report: it is kept until somebody can. */
  function cannotBeRead() {
    isReadable = false;
    stateChanged();
    return see();
  }

  function canBeRead() {
    isReadable = true;
    stateChanged();
    return see();
  }

  return {
    name: () => name,
    stamp: () => stamp,
    isChanged,
    open,
    look: latest(look),
    replace,
    /** Settles when typing that is left aside is among the earlier texts. */
    leftAside: () => forgetting,
    /** Saves; a second call while one is under way waits for that one. */
    save() {
      saving ??= saveNow().finally(() => { saving = null; });
      return saving;
    },
  };
}
