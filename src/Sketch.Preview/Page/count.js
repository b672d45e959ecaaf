// How many cards of a batch are at which stage: add and take back, by one click for each card and stage.
import { button, counted, element, newId, offer } from './elements.js';
import { get, post } from './server.js';

const introduction = 'Count what is done as you go. A card is made once it is in its envelope or given. '
  + 'Each entry is kept at once, in a file beside the batch.';

export function makeCount(panel, { asked, reportProblem }) {
  // The file whose count is shown, and a request to which no answer came: it is sent again with the same id, so it counts once.
  let shown = null;
  let unanswered = null;
  const [many, note, to] = [newId('many'), newId('note'), newId('to')].map((id) => ({ id }));
  many.field = element('input', { id: many.id, type: 'number', min: 1, max: 1000, value: 1, className: 'few' });
  note.field = element('input', { id: note.id, type: 'text', maxLength: 200 });
  to.field = element('select', { id: to.id });
  const recipients = labelled(to, 'Given to');
  const reported = element('p', { role: 'status' });
  const sentences = element('div');
  const problems = element('ul', { className: 'problems' });
  const designs = element('div', { className: 'designs' });
  panel.append(element('p', {}, introduction), sentences,
    element('div', { className: 'choices' }, labelled(many, 'How many'), labelled(note, 'Note'), recipients), reported, problems, designs);
  const rows = new Map();

  async function refresh() {
    const of = asked();
    const answer = await get('count', of);
    if (of.file !== asked().file) return;
    if (shown !== of.file) clear();
    shown = of.file;
    show(answer);
  }

  function clear() {
    rows.clear();
    designs.replaceChildren();
    reported.textContent = '';
    unanswered = null;
  }

  function show({ sentences: said, designs: all, recipients: known, findings }) {
    sentences.replaceChildren(...said.map((s) => element('p', {}, s)));
    problems.replaceChildren(...findings.map((f) => element('li', {}, `${f.file}, line ${f.line}: ${f.message} ${f.hint}`)));
    offer(to.field, [['', 'nobody named'], ...known.map((r) => [r.name, `${r.name} (${r.left} left of ${r.cards})`])]);
    recipients.hidden = known.length === 0;
    const cards = all.map((d) => d.card);
    if (JSON.stringify(cards) !== JSON.stringify([...rows.keys()])) {
      rows.clear();
      for (const design of all) rows.set(design.card, makeRow(design, (stage, sign) => add(design.card, stage, sign)));
      designs.replaceChildren(...[...rows.values()].map((r) => r.part));
    }
    for (const design of all) rows.get(design.card).show(design);
  }

  async function add(card, { stage, title }, sign) {
    const number = sign * Math.max(1, Math.trunc(many.field.valueAsNumber) || 1);
    const entry = { ...asked(), card, stage, number, to: to.field.value, note: note.field.value };
    const again = unanswered && JSON.stringify(entry) === JSON.stringify(unanswered.entry);
    const sent = again ? unanswered : { entry, id: freshId() };
    unanswered = sent;
    try {
      const answer = await post('count', { ...entry, id: sent.id });
      if (unanswered === sent) unanswered = null;
      if (entry.file !== asked().file) return;
      show(answer);
      note.field.value = '';
      reported.textContent = `${sign > 0 ? 'Added' : 'Taken back'}: ${title} ${Math.abs(number)}, ${card}.`;
    } catch (problem) {
      if (problem.status !== 0 && unanswered === sent) unanswered = null;
      if (problem.status === 422) reported.textContent = problem.message;
      else reportProblem(problem);
    }
  }

  return { refresh, clear };
}

/** A field with its label before it. */
const labelled = ({ id, field }, text) => element('span', { className: 'check' }, element('label', { htmlFor: id }, text), field);

/** The stages of one card, each with its number between the buttons. */
function makeRow({ card, stages }, changed) {
  const legend = element('legend');
  const numbers = new Map(stages.map(({ stage }) => [stage, element('span', { className: 'count' })]));
  const part = element('fieldset', {}, legend, element('div', { className: 'stages' }, ...stages.map(({ stage, title }) => element(
    'span', { className: 'stage', role: 'group', 'aria-label': `${title}, ${card}` },
    element('span', { className: 'label' }, title),
    button('−', () => changed({ stage, title }, -1), { 'aria-label': `Take back from ${title}, ${card}` }),
    numbers.get(stage),
    button('+', () => changed({ stage, title }, 1), { 'aria-label': `Add to ${title}, ${card}` }),
  ))));
  return {
    part,
    show({ make, left, stages: now }) {
      legend.textContent = `${card}: ${counted(make, 'card')}, ${left === 0 ? 'all made' : `${left} left`}`;
      for (const { stage, number } of now) numbers.get(stage).textContent = String(number);
    },
  };
}

const freshId = () => [...crypto.getRandomValues(new Uint8Array(8))].map((b) => b.toString(16).padStart(2, '0')).join('');
