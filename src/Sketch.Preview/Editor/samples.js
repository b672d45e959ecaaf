const svg = 'http://www.w3.org/2000/svg';

/**
 * Shows each kind of lettering in its own letters, beside its word in the list of completions.
 *
 * @param read Returns a promise of `samples`, each with a `word`, the `box` and the `path` of a picture; asked once, when first needed.
 */
export function samples(read) {
  let pictures = null;
  return {
    position: 60,
    render(completion) {
      if (completion.type !== 'lettering') return null;
      const picture = document.createElementNS(svg, 'svg');
      picture.classList.add('cm-sample');
      picture.setAttribute('aria-hidden', 'true');
      picture.setAttribute('preserveAspectRatio', 'xMinYMid');
      pictures ??= read();
      pictures.then(
        (answer) => draw(picture, answer.samples.find((sample) => sample.word === completion.label)),
        () => { pictures = null; });
      return picture;
    },
  };
}

const pictured = new Set(['piece', 'line', 'clause']);

/** Shows what a word puts on a card, beside it in the list of completions. */
export function pictures(read) {
  return {
    position: 20,
    render(completion) {
      if (!pictured.has(completion.type)) return null;
      const place = document.createElement('span');
      place.className = 'cm-pictured';
      place.setAttribute('aria-hidden', 'true');
      read().then(({ entries }) => {
        const entry = entries.find((one) => one.word === completion.label);
        if (!entry?.svg) return;
        const picture = document.createElement('img');
        picture.alt = '';
        picture.src = `data:image/svg+xml,${encodeURIComponent(entry.svg)}`;
        place.append(picture);
      }, () => {});
      return place;
    },
  };
}

function draw(picture, sample) {
  if (!sample) return;
  const letters = document.createElementNS(svg, 'path');
  letters.setAttribute('d', sample.path);
  picture.setAttribute('viewBox', sample.box);
  picture.append(letters);
}
