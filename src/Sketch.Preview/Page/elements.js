// Creates elements without markup in strings, so that no text is ever interpreted as markup.

export function element(name, properties = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (key === 'click') made.addEventListener('click', value);
    else if (key in made && key !== 'list') made[key] = value;
    else made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

export const button = (text, click, properties = {}) => element('button', { type: 'button', click, ...properties }, text);

/** A count with its noun: 1 sheet, 2 sheets. */
export const counted = (number, noun) => `${number} ${noun}${number === 1 ? '' : 's'}`;

/** Markup that the program made and has sanitized of scripts and foreign addresses. */
export function markup(html) {
  const made = document.createElement('template');
  made.innerHTML = html;
  return made.content;
}

/** The address of a picture that the program drew, for an image. */
export const drawn = (svg) => `data:image/svg+xml,${encodeURIComponent(svg)}`;

let count = 0;
export const newId = (stem) => `${stem}-${++count}`;

/** Fills a drop-down list with its options,
  pairs of value and text. One that has them already is left alone: somebody may be choosing from it. */
export function offer(select, options, value = select.value) {
  if (JSON.stringify([...select.options].map((o) => [o.value, o.text])) !== JSON.stringify(options)) {
    select.replaceChildren(...options.map(([of, text]) => element('option', { value: of }, text)));
  }
  if (options.some(([of]) => of === value)) select.value = value;
}
