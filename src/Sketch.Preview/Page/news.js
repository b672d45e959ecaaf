// What the program reports while it runs: that it is there, what changes in the opened folder, and which edits cannot be written to disk.
import { isAnswering } from './server.js';

// The program sends a message twice a second. A longer silence means that it has stopped or hangs.
const longestSilence = 1500;
const betweenTries = 500;

// The code with which the program closes the socket of a window beyond the limit.
const tooMany = 4000;

const pause = (time) => new Promise((settled) => { setTimeout(settled, time); });

/**
 * @param changed Called with the name of each file that another program or window changed; with '' when any may have, and first whenever
 * the program is found.
 * @param inMemoryOnly Called regularly with the files of this window whose edits cannot be written to disk.
 * @param lost Called when the program no longer responds.
 * @param stopped Called when it has closed the connection and cannot be reached.
 * @param found Called when it responds again.
 * @param refused Called with a sentence when this window is one too many; nothing is called after that.
 */
export function listen(window, { changed, inMemoryOnly, lost, stopped, found, refused }) {
  const address = new URL(`news?${new URLSearchParams({ window })}`, location);
  address.protocol = 'ws:';
  let isLost = false;
  let silence = 0;

  function lose() {
    clearTimeout(silence);
    if (isLost) return;
    isLost = true;
    lost();
  }

  function hear() {
    clearTimeout(silence);
    silence = setTimeout(lose, longestSilence);
    if (!isLost) return;
    isLost = false;
    found();
  }

  function connect() {
    const socket = new WebSocket(address);
    socket.addEventListener('message', ({ data }) => {
      hear();
      const reported = JSON.parse(data);
      if (reported.inMemoryOnly) inMemoryOnly(reported.inMemoryOnly);
      else changed(reported.changed);
    });
    socket.addEventListener('close', async ({ code, reason }) => {
      if (code === tooMany) {
        hear();
        clearTimeout(silence);
        refused(reason);
        return;
      }
      lose();
      // Browsers delay sockets that fail repeatedly for longer and longer, so the program is first looked for by a request.
      for (let tries = 1; ; tries += 1) {
        await pause(betweenTries);
        if (await isAnswering()) break;
        if (tries === 1) stopped();
      }
      connect();
    });
  }

  silence = setTimeout(lose, longestSilence);
  connect();
}
