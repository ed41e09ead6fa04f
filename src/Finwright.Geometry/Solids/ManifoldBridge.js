// The script side of ManifoldEngine. Solids live here in a table and are named by integers; C# never holds an object.
// The library's own constructors and underscored methods are used, because the convenience wrappers that setup() adds
// leave their polygon vectors unfreed in the WebAssembly heap.
import createManifold from 'manifold.js';

const PageBytes = 65536;
const PositiveFill = 2;

let kernel, Solid, CrossSection, memory;
let solids = [];

// The heap grows through this one method; refusing here turns a runaway into an ordinary failed allocation.
function limitMemory(limitBytes) {
  const grow = WebAssembly.Memory.prototype.grow;
  WebAssembly.Memory.prototype.grow = function (pages) {
    memory = this;
    if (this.buffer.byteLength + pages * PageBytes > limitBytes) {
      bridge.outOfMemory = true;
      throw new RangeError('memory limit');
    }
    return grow.call(this, pages);
  };
}

function keep(solid) {
  solids.push(solid);
  return solids.length - 1;
}

function combine(operation, handles) {
  const operands = new kernel.Vector_manifold();
  for (const handle of handles) operands.push_back(solids[handle]);
  const result = kernel[operation](operands);
  operands.delete();
  return keep(result);
}

// points: x, y of all rings in turn; lengths: points in each ring.
function toPolygons(points, lengths) {
  const polygons = new kernel.Vector2_vec2();
  let at = 0;
  for (const length of lengths) {
    const ring = new kernel.Vector_vec2();
    for (let i = 0; i < length; i++, at += 2) ring.push_back({ x: points[at], y: points[at + 1] });
    polygons.push_back(ring);
    ring.delete();
  }
  return polygons;
}

// Appends [ring count, then for each ring its point count and x, y of each point].
function appendPolygons(polygons, out) {
  const count = polygons.size();
  out.push(count);
  for (let i = 0; i < count; i++) {
    const ring = polygons.get(i);
    const length = ring.size();
    out.push(length);
    for (let j = 0; j < length; j++) {
      const p = ring.get(j);
      out.push(p.x, p.y);
    }
    ring.delete();
  }
}

function signedArea(polygons) {
  let sum = 0;
  const count = polygons.size();
  for (let i = 0; i < count; i++) {
    const ring = polygons.get(i);
    const length = ring.size();
    if (length > 0) {
      const first = ring.get(0);
      let a = { x: 0, y: 0 };
      for (let j = 1; j < length; j++) {
        const p = ring.get(j);
        const b = { x: p.x - first.x, y: p.y - first.y };
        sum += a.x * b.y - a.y * b.x;
        a = b;
      }
    }
    ring.delete();
  }
  return sum / 2;
}

const bridge = {
  state: 'new',
  failure: '',
  outOfMemory: false,

  bytes: length => new Uint8Array(length),
  floats: length => new Float32Array(length),
  integers: length => new Uint32Array(length),
  doubles: length => new Float64Array(length),

  start(wasm, limitBytes) {
    limitMemory(limitBytes);
    createManifold({
      locateFile: name => name,
      instantiateWasm(imports, done) {
        const module = new WebAssembly.Module(wasm);
        const instance = new WebAssembly.Instance(module, imports);
        memory = Object.values(instance.exports).find(e => e instanceof WebAssembly.Memory);
        done(instance, module);
        return instance.exports;
      },
    }).then(
      loaded => {
        kernel = loaded;
        Solid = kernel.Manifold;
        CrossSection = kernel.CrossSection;
        kernel.setup();
        bridge.state = 'ready';
      },
      error => {
        bridge.state = 'failed';
        bridge.failure = String(error);
      });
  },

  memoryBytes: () => memory.buffer.byteLength,
  count: () => solids.length,
  release() {
    for (const solid of solids) solid.delete();
    solids = [];
  },

  mesh: (vertProperties, triVerts) => keep(new Solid({ numProp: 3, vertProperties, triVerts })),

  // Returns the area that positive filling leaves, so that the caller can tell crossing rings; the solid is kept last.
  prism(points, lengths, height) {
    const given = toPolygons(points, lengths);
    const section = new CrossSection(given, PositiveFill);
    given.delete();
    const filled = section._ToPolygons();
    keep(kernel._Extrude(filled, height, 0, 0, { x: 1, y: 1 }));
    filled.delete();
    const area = section.area();
    section.delete();
    return area;
  },

  union: handles => combine('_manifoldUnionN', handles),
  difference: handles => combine('_manifoldDifferenceN', handles),
  intersection: handles => combine('_manifoldIntersectionN', handles),
  place: (handle, matrix) => keep(solids[handle].transform(Array.from(matrix))),
  trim: (handle, x, y, z, offset) => keep(solids[handle]._TrimByPlane({ x, y, z }, offset)),

  // Operations are lazy: asking for the status carries them out.
  status: handle => String(solids[handle].status()),
  triangles: handle => solids[handle].numTri(),
  volume: handle => solids[handle].volume(),

  pieceVolumes(handle) {
    const pieces = solids[handle]._Decompose();
    const volumes = new Float64Array(pieces.size());
    for (let i = 0; i < volumes.length; i++) {
      const piece = pieces.get(i);
      volumes[i] = piece.volume();
      piece.delete();
    }
    pieces.delete();
    return volumes;
  },

  read: handle => solids[handle]._GetMeshJS(-1),

  slices(handle, heights) {
    const out = [];
    for (const height of heights) {
      const raw = solids[handle]._Slice(height);
      const section = new CrossSection(raw, PositiveFill);
      raw.delete();
      const filled = section._ToPolygons();
      section.delete();
      appendPolygons(filled, out);
      filled.delete();
    }
    return new Float64Array(out);
  },

  // For each height: the signed area of the rings as they are cut, and the area they fill.
  sliceAreas(handle, heights) {
    const out = new Float64Array(2 * heights.length);
    for (let i = 0; i < heights.length; i++) {
      const raw = solids[handle]._Slice(heights[i]);
      const section = new CrossSection(raw, PositiveFill);
      out[2 * i] = signedArea(raw);
      out[2 * i + 1] = section.area();
      raw.delete();
      section.delete();
    }
    return out;
  },
};

globalThis.finwright = bridge;
