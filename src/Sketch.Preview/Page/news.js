// What changes in the opened folder, as the program tells it while it runs.

const shortest = 1000;
const longest = 10_000;

/**
 * Calls `told` with the name of each file that another program or window changed; with '' when any may have, first of all
 * whenever the program is found.
 */
export function listen(window, told) {
  const address = new URL(`news?${new URLSearchParams({ window })}`, location);
  address.protocol = 'ws:';
  let pause = shortest;

  function connect() {
    const socket = new WebSocket(address);
    socket.addEventListener('open', () => { pause = shortest; });
    socket.addEventListener('message', (event) => told(event.data));
    socket.addEventListener('close', () => {
      setTimeout(connect, pause);
      pause = Math.min(2 * pause, longest);
    });
  }

  connect();
}
