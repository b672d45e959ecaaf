// What to do with the papers chosen for a card: keep them in the text of the card or of a batch, or drop them.
import { button, element, offer } from './elements.js';
import { get, post } from './server.js';

export function makeKeeping({ work, asked, chosen, textNow, textKept, report, reportProblem }) {
  let orders = { file: null, age: 0, found: [] };
  // These are never disabled, which would lose the focus after one of them is pressed.
  const own = button('Reset to the card’s own papers', ifChosen(() => { work.choices.clear(); chosen(); }));
  const keepHere = button('Keep in the card', ifChosen(keepInCard));
  const order = element('select', { id: 'orders' });
  const keepThere = button('Keep in the batch', ifChosen(keepInBatch));
  const inBatch = element('span', { className: 'check' }, element('label', { htmlFor: 'orders' }, 'Or for '), order, keepThere);

  function ifChosen(act) {
    return () => {
      if (work.choices.size > 0) return act();
      return report('No paper is chosen yet: choose a role, then a paper.');
    };
  }

  async function keepInCard() {
    const [{ file }, before] = [asked(), textNow()];
    try {
      await chosen();
      const { text } = await post('keep', asked());
      // Edits made in the meantime, or another file, are not overwritten.
      if (file !== asked().file || before !== textNow()) return;
      work.choices.clear();
      textKept(text);
      report('The papers are now in the text of the card. Save to keep them in the file.');
    } catch (problem) {
      reportProblem(problem);
    }
  }

  async function keepInBatch() {
    const [batch, line] = order.value.split('\n');
    try {
      await chosen();
      await post('keep', { ...asked(), batch, line: Number(line) });
      report(`The papers are kept in ${batch}, for the cards of line ${line}.`);
    } catch (problem) {
      reportProblem(problem);
    }
  }

  /** Requests the lines of batches that make this card; edits of the card do not change them. */
  async function refreshOrders(age) {
    const { file } = asked();
    if (orders.file === file && orders.age === age) return;
    const asOf = { file, age };
    orders = { ...asOf, found: (await get('orders', asked())).orders };
    offer(order, orders.found.map((o) => [`${o.batch}\n${o.line}`, o.name]));
    inBatch.hidden = orders.found.length === 0;
  }

  return {
    part: element('div', { className: 'choices' }, keepHere, own, inBatch),
    /** @param age Increases when files have changed. */
    async refresh(age) {
      await refreshOrders(age);
      for (const control of [own, keepHere, keepThere]) control.ariaDisabled = String(work.choices.size === 0);
    },
  };
}
