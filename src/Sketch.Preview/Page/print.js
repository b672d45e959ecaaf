// Cut sizes to read, and full-size templates to print.
import { counted, element, markup } from './elements.js';
import { latest } from './latest.js';
import { get } from './server.js';

export function makeSizes(panel, asked) {
  const units = element('select', { id: 'units' },
    element('option', { value: '' }, 'As in the card'),
    element('option', { value: 'in' }, 'Inches, as on a ruler'),
    element('option', { value: 'mm' }, 'Millimetres'));
  const place = element('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'Cut sizes' });
  units.addEventListener('change', () => refresh());
  panel.append(element('div', { className: 'choices' }, element('label', { htmlFor: 'units' }, 'Units '), units), place);

  async function refresh() {
    try {
      const answer = await get('sizes', { ...asked(), units: units.value });
      place.replaceChildren(markup(answer.html));
    } catch (problem) {
      place.replaceChildren(element('p', { className: 'empty' }, problem.message));
    }
  }

  return { refresh };
}

// Pages are counted when typing pauses.
const patience = 300;

export function makeTemplates(panel, asked, hasErrors) {
  const page = element('select', { id: 'page' },
    element('option', { value: 'letter' }, 'Letter, 8 1/2 x 11 in'),
    element('option', { value: 'a4' }, 'A4, 210 x 297 mm'));
  const hollow = element('input', { type: 'checkbox' });
  const mirror = element('input', { type: 'checkbox' });
  const pages = element('span');
  const open = element('a', { className: 'chief', target: '_blank', rel: 'noopener' }, 'Open the templates (PDF)');
  panel.append(
    element('p', {}, 'Every piece at full size, to trace and cut, with placement guides. '
      + 'Print at actual size (100 %), then check the bar on the page with a ruler.'),
    element('div', { className: 'choices column' },
      element('label', { htmlFor: 'page' }, 'Printer paper '), page,
      element('label', { className: 'check' }, hollow, ' Cut away the middle of each layer that the next one covers, to save paper'),
      element('label', { className: 'check' }, mirror, ' Add mirrored guides, for tracing from the back')),
    element('p', {}, open, ' ', pages),
    element('h3', {}, 'Take care'),
    element('p', {}, 'Craft knives and guillotines are sharp. Cut on a mat along a metal ruler, '
      + 'keep your other hand behind the blade, and lock the arm of a guillotine when you leave it.'));
  const wait = element('p', { className: 'empty' },
    'The text has errors. To print templates, first fix the problems listed below the text.');
  open.after(wait);
  const chosen = () => ({ ...asked(), page: page.value, hollow: hollow.checked ? 'yes' : '', mirror: mirror.checked ? 'yes' : '' });
  const count = latest(async () => {
    if (hasErrors()) return;
    try {
      pages.textContent = counted((await get('templates', chosen())).pages, 'page');
    } catch {
      // The link says what is wrong when it is followed.
      pages.textContent = '';
    }
  }, patience);
  const aim = () => {
    wait.hidden = !hasErrors();
    open.hidden = pages.hidden = hasErrors();
    open.href = `templates.pdf?${new URLSearchParams(chosen())}`;
    count();
  };
  for (const choice of [page, hollow, mirror]) choice.addEventListener('change', aim);
  return { refresh: aim };
}
