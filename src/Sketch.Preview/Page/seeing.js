// Sends what is typed to the program, which keeps it and answers with what it comes to.
import { latest } from './latest.js';
import { post } from './server.js';

const patience = 250;
const betweenTries = 1000;

/**
 * @param sheet What is typed, and in which file; its `file` is empty when none is open.
 * @param wanted What else to say when the answer shall be shown.
 * @param shown Called with each answer and the text that it is of.
 */
export function makeSeeing({ sheet, wanted, shown, reportProblem }) {
  // The text that the program has or is getting, null where that is not sure; and the handing over that is under way, which must not
  // come after a later text.
  let sent = null;
  let handing = null;
  // What the program is known to have.
  let had = { file: '', text: '' };

  /** Sends the text as it stands; settles when the program has it and all that came after. */
  const see = latest(async () => {
    await handing;
    const now = sheet();
    if (!now.file) return;
    const answer = await send('see', { ...now, ...wanted() });
    if (answer && now.file === sheet().file) shown(answer, now.text);
  });

  /** Hands over what is typed while the program is long about an earlier text, so that it is kept on the disk meanwhile. */
  const keep = latest(async () => {
    const now = sheet();
    if (!now.file || now.text === sent) return;
    handing = send('typed', now);
    await handing;
  }, patience);

  async function send(address, said) {
    sent = said.text;
    try {
      const answer = await post(address, said);
      had = said;
      return answer;
    } catch (problem) {
      sent = null;
      reportProblem(problem);
      // A program that has stopped is sent the text when it is found again.
      if (problem.status !== 0) setTimeout(keep, betweenTries);
      return null;
    }
  }

  return {
    see,
    keep,
    /** Whether the program has the text as it stands; else it is nowhere but in this window. */
    isHandedOver() {
      const now = sheet();
      return !now.file || (had.file === now.file && had.text === now.text);
    },
  };
}
