// Asks one thing at a time: whoever asks meanwhile is answered by one more, which then tells the latest.

/** A function that runs `act`, or has it run once more when it is running; it settles when all is done that was asked until then. */
export function latest(act) {
  let running = null;
  let isBehind = false;

  async function run() {
    while (isBehind) {
      isBehind = false;
      await act();
    }
  }

  return () => {
    isBehind = true;
    running ??= run().finally(() => { running = null; });
    return running;
  };
}
