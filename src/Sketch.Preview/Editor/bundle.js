// Bundles editor.js into the file named on the command line. Runs where `npm ci` has run.
import { existsSync, readFileSync, readdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const target = process.argv[2];
const { outputFiles, metafile } = await build({
  entryPoints: ['editor.js'],
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  legalComments: 'eof',
  metafile: true,
  write: false,
});

// The packages have their licences in separate files, which bundlers do not keep.
const packages = new Set(
  Object.keys(metafile.inputs).map((file) => /^node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1]).filter(Boolean));
const licences = [...packages].sort().map((name) => {
  const folder = join('node_modules', name);
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (!file) throw new Error(`${name} has no licence file.`);
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return `${name} ${version}\n\n${readFileSync(join(folder, file), 'utf8').trim()}`;
});

// Renaming replaces the file in one step, so a build at the same time never reads half of it.
const bundle = `${outputFiles[0].text}/*!\n${licences.join('\n\n----\n\n').replaceAll('*/', '* /')}\n*/\n`;
writeFileSync('bundled.js', bundle);
try {
  renameSync('bundled.js', target);
} catch (problem) {
  // On Windows a file that another build is reading cannot be replaced; usually it is the same.
  if (!existsSync(target) || readFileSync(target, 'utf8') !== bundle) throw problem;
}
