// The same steps on the same library, as its own documentation uses it: results are worked out when volume and mesh are asked for.
import { existsSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const NotInstalled = 3;
const asked = JSON.parse(readFileSync(0, 'utf8'));
if (!existsSync(asked.library)) {
  console.error(`${asked.library} is not there; the build of the geometry project fetches it.`);
  process.exit(NotInstalled);
}

const { default: load } = await import(pathToFileURL(asked.library));
const kernel = await load();
kernel.setup();
const { Manifold, CrossSection, Mesh } = kernel;

const steps = asked.steps.map(step => ({
  ...step,
  coordinates: step.coordinates && new Float32Array(step.coordinates),
  corners: step.corners && new Uint32Array(step.corners),
  rings: step.rings,
}));

function apply(step, solids) {
  switch (step.kind) {
    case 'mesh':
      return new Manifold(new Mesh({ numProp: 3, vertProperties: step.coordinates, triVerts: step.corners }));
    case 'prism': {
      const section = new CrossSection(step.rings, 'Positive');
      const prism = section.extrude(step.height);
      section.delete();
      return prism;
    }
    case 'union':
    case 'difference':
    case 'intersection':
      return Manifold[step.kind](step.operands.map(operand => solids[operand]));
    case 'place':
      return solids[step.operands[0]].transform(step.matrix);
    case 'trim':
      return solids[step.operands[0]].trimByPlane(step.normal, step.offset);
    default:
      throw new Error(`There is no step "${step.kind}".`);
  }
}

function work() {
  const solids = [];
  for (const step of steps) solids.push(apply(step, solids));
  const results = asked.results.map(index => {
    const solid = solids[index];
    const pieces = solid.decompose();
    const volumes = pieces.map(piece => piece.volume());
    for (const piece of pieces) piece.delete();
    return { volume: solid.volume(), pieces: volumes.length, triangles: solid.getMesh().triVerts.length / 3 };
  });
  for (const solid of solids) solid.delete();
  return results;
}

const now = () => performance.now() / 1000;
const until = now() + asked.timing.warmUp;
do work(); while (now() < until);
const seconds = [];
let spent = 0, results;
while (seconds.length < asked.timing.leastSamples || spent < asked.timing.sampling) {
  const start = now();
  results = work();
  seconds.push(now() - start);
  spent += seconds.at(-1);
}

process.stdout.write(JSON.stringify({ seconds, results, version: `Node ${process.versions.node}` }));
