// Sends edits to the program, which keeps them and answers with the results.
import { latest } from './latest.js';
import { post } from './server.js';

const patience = 250;
const betweenTries = 1000;

/**
 * @param ask Asks what to show of a text.
 * @param sheet The text and its file; its `file` is empty when none is open.
 * @param wanted What else to send with a request whose answer will be shown.
 * @param shown Called with each answer and its text.
 */
export function makeSeeing({ ask, sheet, wanted, shown, reportProblem }) {
  // The text that the program has or is getting, null where that is uncertain; and the transfer in progress, which must not
  // arrive after a later text.
  let sent = null;
  let handing = null;
  // The text that the program is known to have.
  let had = { file: '', text: '' };

  /** Sends the current text; settles when the program has it and all later ones. */
  const see = latest(async () => {
    await handing;
    const now = sheet();
    if (!now.file) return;
    const answer = await send(ask, { ...now, ...wanted() });
    if (answer && now.file === sheet().file) shown(answer, now.text);
  });

  /** Transfers edits while the program is still busy with an earlier text, so that they are kept on disk in the meantime. */
  const keep = latest(async () => {
    const now = sheet();
    if (!now.file || now.text === sent) return;
    handing = send((said) => post('typed', said), now);
    await handing;
  }, patience);

  async function send(by, said) {
    sent = said.text;
    try {
      const answer = await by(said);
      had = said;
      return answer;
    } catch (problem) {
      sent = null;
      reportProblem(problem);
      // A program that has stopped gets the text when it responds again.
      if (problem.status !== 0) setTimeout(keep, betweenTries);
      return null;
    }
  }

  return {
    see,
    keep,
    /** Whether the program has the current text; else it is only in this window. */
    isHandedOver() {
      const now = sheet();
      return !now.file || (had.file === now.file && had.text === now.text);
    },
  };
}
