// Reads DXF files with a library that has nothing to do with Sketch and writes what it found as JSON: file by file the version, the unit,
// the layers and the lines, each with its layer and its corners.
import { readFileSync } from 'node:fs';
import DxfParser from 'dxf-parser';

const read = name => {
  const { header, tables, entities } = new DxfParser().parseSync(readFileSync(name, 'utf8'));
  return {
    version: header.$ACADVER,
    unit: header.$INSUNITS,
    layers: Object.values(tables.layer.layers).map(l => ({ name: l.name, colour: l.colorIndex ?? l.color })),
    lines: entities.map(e => ({
      type: e.type,
      layer: e.layer,
      isClosed: e.shape,
      corners: e.vertices.map(v => [v.x, v.y, v.bulge ?? 0]),
    })),
  };
};

process.stdout.write(JSON.stringify(process.argv.slice(2).map(read)));
