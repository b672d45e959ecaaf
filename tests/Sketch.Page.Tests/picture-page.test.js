import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import extension from '../../src/Sketch.Editors/VsCode/picture-page.js';

const { picturePage } = extension;

test('Each face of a card is shown with its name', () => {
  const page = picturePage({ title: 'Lamp', pictures: [{ face: 'front', svg: '<svg id="a"></svg>' }] });

  const [, picture] = /<img src="data:image\/svg\+xml;base64,([^"]*)" alt="Lamp: front"><figcaption>front</.exec(page);
  assert.equal(atob(picture), '<svg id="a"></svg>');
});

test('A card that cannot be drawn is explained, and its words are only words', () => {
  const page = picturePage({ title: '<b>Lamp</b>', pictures: [], problem: 'The card & its <words>' });

  assert.match(page, /<title>&lt;b&gt;Lamp&lt;\/b&gt;<\/title>/);
  assert.match(page, /<p>The card &amp; its &lt;words&gt;<\/p>/);
});

test('The page loads nothing from elsewhere and runs no script', () => {
  const page = picturePage({ title: 'Lamp', pictures: [] });

  assert.match(page, /default-src 'none'; style-src 'unsafe-inline'; img-src data:/);
  assert.doesNotMatch(page, /<script|https?:/);
});

test('Each file that the extension names is in its folder', () => {
  const folder = new URL('../../src/Sketch.Editors/VsCode/', import.meta.url);
  const { main, contributes: { languages, grammars } } = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8'));

  for (const name of [main, ...languages.map((l) => l.configuration), ...grammars.map((g) => g.path)]) {
    assert.ok(readFileSync(new URL(name, folder)).length > 0, name);
  }
  assert.deepEqual(grammars.map((g) => g.language), languages.map((l) => l.id));
});
