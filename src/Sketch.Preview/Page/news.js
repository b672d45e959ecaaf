// What changes in the opened folder, as the program tells it while it runs.

const shortest = 1000;
const longest = 10_000;

// The code with which the program closes the socket of a window that is one too many.
const tooMany = 4000;

/**
 * Calls `told` with the name of each file that another program or window changed; with '' when any may have, first of all
 * whenever the program is found. Calls `refused` with a sentence when this window is one too many, and listens no more.
 */
export function listen(window, told, refused) {
  const address = new URL(`news?${new URLSearchParams({ window })}`, location);
  address.protocol = 'ws:';
  let pause = shortest;

  function connect() {
    const socket = new WebSocket(address);
    socket.addEventListener('open', () => { pause = shortest; });
    socket.addEventListener('message', (event) => told(event.data));
    socket.addEventListener('close', ({ code, reason }) => {
      if (code === tooMany) {
        refused(reason);
        return;
      }
      setTimeout(connect, pause);
      pause = Math.min(2 * pause, longest);
    });
  }

  connect();
}
