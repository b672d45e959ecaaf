// What changes in the opened folder, as the program tells it while it runs.

const pause = 1000;

/**
 * Calls `told` with the name of each file that another program or window changed; with '' when any may have, first of all
 * whenever the program is found.
 */
export function listen(window, told) {
  const address = new URL(`news?${new URLSearchParams({ window })}`, location);
  address.protocol = 'ws:';

  function connect() {
    const socket = new WebSocket(address);
    socket.addEventListener('message', (event) => told(event.data));
    socket.addEventListener('close', () => setTimeout(connect, pause));
  }

  connect();
}
