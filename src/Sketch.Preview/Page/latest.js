// Runs one action at a time: calls during a run are served by one more run, which then uses the latest state.

/**
 * A function that runs `act`, or has it run once more when it is running; it settles when all calls up to then are served. With a
 * `patience` in milliseconds it waits that long first, and combines the calls in that time.
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
