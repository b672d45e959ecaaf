'use strict';

/**
 * The page that shows a card: pictures drawn by the language server, no script, nothing from elsewhere.
 *
 * @param card The answer of `sketch/pictures`: a `title`, `pictures` with `face` and `svg`, or the `problem` why there are none.
 */
function picturePage({ title, pictures, problem }) {
  // As images of their own, so that a name in one picture is not found in another.
  const figures = pictures.map(({ face, svg }) => `<figure><img src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}" `
    + `alt="${escaped(`${title}: ${face}`)}"><figcaption>${escaped(face)}</figcaption></figure>`);
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${escaped(title)}</title>
<style>
body { margin: 0; padding: 1rem; display: flex; flex-wrap: wrap; gap: 1.5rem; align-items: flex-start; }
figure { margin: 0; max-width: 100%; }
figure img { display: block; max-width: 100%; height: auto; }
figcaption { margin-top: .5rem; font: var(--vscode-font-size) var(--vscode-font-family); color: var(--vscode-descriptionForeground); }
</style>
</head>
<body>${problem ? `<p>${escaped(problem)}</p>` : figures.join('\n')}</body>
</html>`;
}

function escaped(text) {
  return text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign]);
}

module.exports = { picturePage };
