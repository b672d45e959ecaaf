// The file that is open in this window: its content on disk, its unsaved edits, and which text wins when they conflict.
import { notice, quiet } from './dialog.js';
import { latest } from './latest.js';
import { get, post } from './server.js';

export class OpenFile {
  #page;
  #name = '';
  // Its content on disk; the stamp is that of the bytes, and empty when there is no file.
  #saved = '';
  #stamp = '';
  // Whether the file could be read when it was last checked.
  #isReadable = false;
  #saving = null;
  #openings = 0;
  #forgetting = Promise.resolve();
  #answered = () => {};

  /**
   * @param page What the file needs of the page:
   * - `editor` holds the text, and `window` is the name of this window;
   * - `see` sends the current text, and settles when the program has it or it could not be sent;
   * - `isHandedOver` returns whether the program has the current text;
   * - `opened` is called when another file has been opened, before its text is shown;
   * - `listChanged` is called when files may have been created or deleted;
   * - `stateChanged` is called when the text, or what is known about the disk, has changed;
   * - `reportProblem` is called with what went wrong.
   */
  constructor(page) {
    this.#page = page;
  }

  get name() {
    return this.#name;
  }

  get stamp() {
    return this.#stamp;
  }

  /**
   * Whether the file differs from the text of this window. One that does not exist, or cannot be read, has no text, not even an
   * empty one.
   */
  get isChanged() {
    return Boolean(this.#name) && (this.#isTyped() || !this.#stamp || !this.#isReadable);
  }

  /** Compares with the disk, where another program or window has changed this file. */
  look = latest(() => this.#look());

  /** Settles when the edits that are set aside are among the earlier versions. */
  leftAside() {
    return this.#forgetting;
  }

  /** Saves; a second call during a save waits for that save. */
  save() {
    this.#saving ??= this.#saveNow().finally(() => { this.#saving = null; });
    return this.#saving;
  }

  #isTyped() {
    return this.#page.editor.text() !== this.#saved;
  }

  /** Shows a question or notice about the file on disk; only the latest stays. */
  #report(sentence, ...answers) {
    this.#answered();
    this.#answered = notice(sentence, ...answers);
  }

  /** Opens a file; false when it cannot be opened, or another was opened in the meantime. */
  async open(file) {
    this.#openings += 1;
    const mine = this.#openings;
    let found;
    try {
      found = await get('text', { file, window: this.#page.window });
    } catch (problem) {
      this.#page.reportProblem(problem);
      return false;
    }
    // The last edits of the previous file have to reach the program first; if they cannot, that file stays open.
    if (this.#name) await this.#page.see();
    if (mine !== this.#openings || (this.isChanged && !this.#page.isHandedOver())) return false;
    quiet();
    [this.#name, this.#saved, this.#stamp, this.#isReadable] = [file, found.text, found.stamp, !found.problem];
    this.#page.opened();
    this.#page.editor.open(found.text);
    // An existing file that cannot be read has no text; its unsaved edits are shown all the same.
    if (found.problem) this.#report(found.problem, ['Dismiss', null]);
    if (found.unsaved?.own) this.#takeUp(found.unsaved);
    else if (found.unsaved) this.#offer(found.unsaved);
    await this.#page.listChanged();
    this.#page.stateChanged();
    await this.#page.see();
    return true;
  }

  replace(text) {
    this.#page.editor.replaceAll(text);
    this.#page.stateChanged();
    return this.#page.see();
  }

  #takeUp(unsaved) {
    this.#page.editor.replaceAll(unsaved.text);
    // If the file was changed after these edits, a save would conflict with that, so the question is asked now.
    if (!this.#stamp) this.#reportGone();
    else if (unsaved.stamp !== this.#stamp) this.#askWhose(
      { text: this.#saved, stamp: this.#stamp }, unsaved.stamp, 'This file has been saved with different text since then.');
    this.#page.stateChanged();
  }

  #offer(unsaved) {
    const when = new Date(unsaved.time).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
    const file = this.#name;
    const forget = (keep) => {
      this.#forgetting = post('forget', { file, window: unsaved.window, keep }).catch(this.#page.reportProblem);
      return this.#forgetting;
    };
    notice(`This file has unsaved text from ${when}.`,
      ['Restore it', async () => { this.#takeUp(unsaved); await this.#page.see(); if (this.#page.isHandedOver()) await forget(false); }],
      ['Discard it', () => forget(true)]);
  }

  async #saveNow() {
    const [file, text] = [this.#name, this.#page.editor.text()];
    if (!this.isChanged) return;
    try {
      const answer = await post('save', { file, window: this.#page.window, text, stamp: this.#stamp });
      if (file !== this.#name) return;
      [this.#saved, this.#stamp, this.#isReadable] = [text, answer.stamp, true];
      this.#answered();
      this.#page.stateChanged();
      await this.#page.see();
      await this.#page.listChanged();
    } catch (problem) {
      if (problem.status !== 409 || file !== this.#name) this.#page.reportProblem(problem);
      else if (problem.answer.stamp) this.#askWhose(problem.answer, this.#stamp);
      else await this.#reportGone();
    }
  }

  /** The file no longer exists: the text stays as unsaved edits. */
  #reportGone() {
    [this.#saved, this.#stamp] = ['', ''];
    this.#report(`${this.#name} is no longer in the folder. Save puts this text back.`, ['Dismiss', null]);
    this.#page.stateChanged();
    return this.#page.see();
  }

  /** The file has changed on disk and this window has edits of its own: the user decides. */
  #askWhose(theirs, known, why = 'Another program or window has changed this file while you were typing.') {
    const know = () => { [this.#saved, this.#stamp] = [theirs.text, theirs.stamp]; };
    this.#stamp = known;
    const takeTheirs = async () => {
      const file = this.#name;
      // The edits are kept among the earlier versions: Undo has them only as long as this window is open.
      await this.#page.see();
      if (!this.#page.isHandedOver()) return;
      await post('forget', { file, window: this.#page.window, keep: true });
      if (file !== this.#name) return;
      know();
      await this.replace(theirs.text);
    };

    this.#report(`${why} Both texts are kept. Which one do you want to work on?`,
      ['Keep my text', () => { know(); this.#page.stateChanged(); this.#page.see(); }],
      ['Use the other text', () => takeTheirs().catch(this.#page.reportProblem)]);
  }

  async #look() {
    await this.#saving;
    const [file, known] = [this.#name, this.#stamp];
    let there = null;
    try {
      there = await get('text', { file, window: this.#page.window });
    } catch (problem) {
      if (problem.status !== 404) {
        this.#page.reportProblem(problem);
        // While the program does not respond, nothing is known about the file.
        if (file === this.#name && problem.status !== 0) await this.#cannotBeRead();
        return;
      }
    }
    if (file !== this.#name) return;
    // A save in the meantime makes the answer outdated.
    if (this.#saving || this.#stamp !== known) {
      await this.#look();
      return;
    }
    // Unsaved edits of a file that is gone come without a stamp.
    if (!there?.stamp) {
      if (this.#stamp) await this.#reportGone();
      await this.#page.listChanged();
      return;
    }
    if (there.problem) {
      if (there.stamp !== this.#stamp) this.#report(there.problem, ['Dismiss', null]);
      await this.#cannotBeRead();
      return;
    }
    if (there.stamp === this.#stamp) {
      if (!this.#isReadable) await this.#canBeRead();
      return;
    }
    this.#isReadable = true;
    this.#answered();
    if (this.#isTyped() && this.#page.editor.text() !== there.text) {
      this.#askWhose(there, this.#stamp);
      return;
    }
    [this.#saved, this.#stamp] = [there.text, there.stamp];
    if (this.#page.editor.text() !== there.text) this.#page.editor.replaceAll(there.text);
    this.#page.stateChanged();
    await this.#page.see();
  }

  /** The text is in this window, and whether it is on disk is unknown: it is kept until that is known. */
  #cannotBeRead() {
    this.#isReadable = false;
    this.#page.stateChanged();
    return this.#page.see();
  }

  #canBeRead() {
    this.#isReadable = true;
    this.#page.stateChanged();
    return this.#page.see();
  }
}
