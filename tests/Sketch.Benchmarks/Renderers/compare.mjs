/*
 * Draws SVG files with several renderers and says how much their pictures differ from those of the first.
 *
 *   npm install && node compare.mjs FOLDER
 *
 * FOLDER holds SVG files. A PNG of the same name beside one, such as `sketch draw --as svg,png --dpi 96` makes it, is the picture of Sketch
 * itself. Each file is drawn three times: as it is, without href (as a program sees it that knows only SVG 1.1) and without xlink:href.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { PNG } from 'pngjs';
import sharp from 'sharp';

const [folder] = process.argv.slice(2);
const work = mkdtempSync(join(tmpdir(), 'renderers-'));
const [svgFile, pngFile] = [join(work, 'picture.svg'), join(work, 'picture.png')];

const spellings = {
  'as written': (svg) => svg,
  'only xlink:href': (svg) => svg.replaceAll(/ href="[^"]*"/g, ''),
  'only href': (svg) => svg.replaceAll(/ xlink:href="#[^"]*"/g, ''),
};

const renderers = {
  'resvg': (svg) => PNG.sync.read(Buffer.from(new Resvg(svg, { dpi: 96 }).render().asPng())),
  'librsvg in sharp': async (svg) => PNG.sync.read(await sharp(Buffer.from(svg), { density: Math.sqrt(96 * 72) }).png().toBuffer()),
  'rsvg-convert': () => run('rsvg-convert', ['--dpi-x=96', '--dpi-y=96', `--output=${pngFile}`, svgFile]),
  'Chromium': (svg) => run('chromium', [
    '--headless', '--no-sandbox', '--disable-gpu', '--hide-scrollbars', `--user-data-dir=${work}/profile`, '--force-device-scale-factor=1',
    '--default-background-color=00000000', `--screenshot=${pngFile}`, `--window-size=${sizeOf(svg)}`, svgFile]),
  'CairoSVG': () => run('/usr/bin/python3', ['-c', `import cairosvg; cairosvg.svg2png(url='${svgFile}', write_to='${pngFile}', dpi=96)`]),
  'Sketch (Svg.Skia)': (_, beside) => existsSync(beside) ? PNG.sync.read(readFileSync(beside)) : null,
};

function run(program, args) {
  rmSync(pngFile, { force: true });
  try {
    execFileSync(program, args, { stdio: 'ignore' });
  } catch {
    return null;
  }
  return existsSync(pngFile) ? PNG.sync.read(readFileSync(pngFile)) : null;
}

function sizeOf(svg) {
  const inPixels = (name) => {
    const [, number, unit] = new RegExp(` ${name}="([\\d.]+)(in|mm)"`).exec(svg);
    return Math.round(Number(number) * (unit === 'in' ? 96 : 96 / 25.4));
  };
  return `${inPixels('width')},${inPixels('height')}`;
}

/** The mean difference of a channel, on white, of 255. */
function difference(a, b) {
  const [width, height] = [Math.min(a.width, b.width), Math.min(a.height, b.height)];
  let sum = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [i, j] = [(y * a.width + x) * 4, (y * b.width + x) * 4];
      for (let channel = 0; channel < 3; channel++) sum += Math.abs(onWhite(a.data, i, channel) - onWhite(b.data, j, channel));
    }
  }
  return sum / (width * height * 3);
}

const onWhite = (data, at, channel) => 255 + (data[at + channel] - 255) * data[at + 3] / 255;

const files = readdirSync(folder).filter((name) => name.endsWith('.svg'));
console.log(`${files.length} pictures, mean difference of a channel of 255 from resvg's picture as written: mean (most)`);
console.log(`| renderer | ${Object.keys(spellings).join(' | ')} |`);
console.log(`| --- | ${Object.keys(spellings).map(() => '---:').join(' | ')} |`);
for (const [name, draw] of Object.entries(renderers)) {
  const cells = [];
  for (const spell of Object.values(spellings)) {
    const found = [];
    for (const file of files) {
      const written = readFileSync(join(folder, file), 'utf8');
      writeFileSync(svgFile, spell(written));
      const picture = await draw(spell(written), join(folder, file.replace(/svg$/, 'png')));
      if (picture) found.push(difference(PNG.sync.read(Buffer.from(new Resvg(written, { dpi: 96 }).render().asPng())), picture));
    }
    cells.push(found.length === files.length
      ? `${(found.reduce((sum, one) => sum + one, 0) / found.length).toFixed(2)} (${Math.max(...found).toFixed(2)})` : '-');
  }
  console.log(`| ${name} | ${cells.join(' | ')} |`);
}
rmSync(work, { recursive: true, force: true });
