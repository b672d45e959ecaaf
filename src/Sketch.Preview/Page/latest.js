// Does one thing at a time: whoever asks meanwhile is served by doing it once more, which then is about the latest.

/**
 * A function that does `act`, or has it done once more when it is under way; it settles when all is done that was asked until then. With a
 * `patience` in milliseconds it waits that long before, and what is asked meanwhile is one.
 */
export function latest(act, patience = 0) {
  let running = null;
  let isBehind = false;

  async function run() {
    while (isBehind) {
      if (patience > 0) await new Promise((settled) => { setTimeout(settled, patience); });
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
