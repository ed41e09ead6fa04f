// The fin in three dimensions. Draws only when something moved; takes scene files (see SceneFile) and shows the latest.
import * as THREE from "three";
import { OrbitControls } from "three/controls";

const NotKnown = -1e30, MostTimings = 400;

// For whoever measures: when the hand moved, when the scene was asked for, came, and was drawn; milliseconds of performance.now().
const timings = [];
let moved = 0;
addEventListener("input", () => { moved = performance.now(); }, { capture: true, passive: true });
window.finwright ??= {};
window.finwright.scene = { timings };

// A colour of the page's tokens as the screen has it, 0 to 1; tokens may be written as light-dark(…): the browser resolves them on an element.
function ink(name) {
    const probe = document.createElement("span");
    probe.hidden = true;
    document.body.append(probe);
    probe.style.color = `var(${name})`;
    const parts = getComputedStyle(probe).color.match(/[\d.]+/g).map(Number);
    probe.remove();
    return new THREE.Vector3(parts[0] / 255, parts[1] / 255, parts[2] / 255);
}

function inks() {
    const paper = ink("--paper"), line = ink("--ink"), quiet = ink("--quiet"), water = ink("--water"), move = ink("--move"), fails = ink("--fails"), rule = ink("--rule");
    const mix = (a, b, share) => a.clone().lerp(b, share);
    return {
        paper, ink: line, quiet, water, move, fails,
        blade: mix(water, paper, 0.62), base: mix(quiet, paper, 0.55), clear: mix(water, paper, 0.3), clearbase: quiet,
        metal: mix(quiet, line, 0.2), nut: mix(line, quiet, 0.35), rod: line, air: mix(paper, water, 0.25), slice: mix(water, paper, 0.62), rule,
    };
}

export function read(buffer) {
    const view = new DataView(buffer);
    if (view.getUint32(0, false) !== 0x46575331)
        throw new Error("not a scene");
    const length = view.getUint32(4, true), start = 8 + length;
    const header = JSON.parse(new TextDecoder().decode(new Uint8Array(buffer, 8, length)));
    const floats = ref => ref ? new Float32Array(buffer, start + ref.at, ref.count) : null;
    const ints = ref => ref ? new Uint32Array(buffer, start + ref.at, ref.count) : null;
    return {
        about: header.about ?? {},
        labels: header.labels ?? [],
        parts: header.parts.map(part => ({
            ...part,
            position: floats(part.position), index: ints(part.index), value: floats(part.value), shift: floats(part.shift), lines: floats(part.lines),
        })),
    };
}

const vertex = `
attribute float value;
varying float vValue;
varying vec3 vNormal, vView;
uniform float grow;
uniform vec2 pixel;
void main() {
    vec4 seen = modelViewMatrix * vec4(position, 1.0);
    vNormal = normalMatrix * normal;
    vView = seen.xyz;
    vValue = value;
    gl_Position = projectionMatrix * seen;
    gl_Position.xy += grow * pixel * gl_Position.w * normalize(vNormal.xy + vec2(1e-6));
}`;

// Normals are smooth where the surface is, and those of the facet at edges. Fields keep most of their colour in the shade; lines part their bands.
const fragment = `
uniform vec3 tone, ink, quiet, fails;
uniform float alpha, rim, first, size, bands, limit;
uniform bool isField, hasLimit, isDashed, isFlat;
uniform sampler2D ramp;
varying float vValue;
varying vec3 vNormal, vView;
float line(float at, float width) { return 1.0 - smoothstep(0.5, 1.3, abs(at) / max(width, 1e-6)); }
void main() {
    if (isDashed && mod(gl_FragCoord.x + gl_FragCoord.y, 12.0) > 7.0)
        discard;
    if (isFlat) {
        gl_FragColor = vec4(tone, alpha);
        return;
    }
    vec3 facet = normalize(cross(dFdx(vView), dFdy(vView))), n = normalize(vNormal);
    n = gl_FrontFacing ? n : -n;
    if (dot(n, facet) < 0.85)
        n = facet;
    float light = 0.62 + 0.3 * max(dot(n, normalize(vec3(-0.5, 0.65, 0.7))), 0.0) + 0.14 * max(n.z, 0.0);
    vec3 colour = tone;
    float a = alpha;
    if (isField) {
        light = mix(1.0, light, 0.4);
        if (vValue < -1e29) {
            colour = mix(quiet, vec3(1.0), mod(gl_FragCoord.x - gl_FragCoord.y, 8.0) > 4.0 ? 0.35 : 0.6);
        } else {
            float band = (vValue - first) / size, place = clamp(floor(band), 0.0, bands - 1.0), near = floor(band + 0.5);
            colour = texture2D(ramp, vec2((place + 0.5) / bands, 0.5)).rgb;
            if (near > 0.5 && near < bands - 0.5)
                colour = mix(colour, place > 0.5 * bands ? vec3(1.0) : ink, 0.4 * line(band - near, fwidth(band)));
            if (hasLimit)
                colour = mix(colour, fails, line(vValue - limit, 2.0 * fwidth(vValue)));
        }
    }
    if (rim > 0.0)
        a = mix(alpha, 0.85, pow(1.0 - abs(dot(n, normalize(-vView))), 3.0) * rim);
    gl_FragColor = vec4(min(colour * light, vec3(1.0)), a);
}`;

export function open(host, figure) {
    const renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true, stencil: true, preserveDrawingBuffer: true });
    const overlay = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    overlay.setAttribute("aria-hidden", "true");
    host.replaceChildren(renderer.domElement, overlay);
    const scene = new THREE.Scene(), camera = new THREE.PerspectiveCamera(26, 1, 0.01, 20);
    // Design axes have y down; turned about x, the tip points down on the screen and the nose stays to the left.
    const stage = new THREE.Group();
    stage.rotation.x = Math.PI;
    scene.add(stage);
    const controls = new OrbitControls(camera, renderer.domElement);
    const pixel = new THREE.Vector2();
    let tones = inks(), ramp = null, file = null, factor = 1, factorSaid = null, live = [], kind = null, wanted = null, under = false, due = false, closed = false, stamp = null, pointed = "", reached = 0, mine = false;

    function draw() {
        due = false;
        if (closed)
            return;
        renderer.render(scene, camera);
        place();
        host.dataset.frames = String(Number(host.dataset.frames ?? 0) + 1);
        if (stamp) {
            stamp.drawn = performance.now();
            timings.push(stamp);
            if (timings.length > MostTimings)
                timings.shift();
            host.dataset.version = String(stamp.version);
            host.dataset.surface = stamp.surface;
            stamp = null;
        }
    }
    function ask() {
        if (!due) {
            due = true;
            requestAnimationFrame(draw);
        }
    }
    controls.addEventListener("change", ask);
    controls.addEventListener("start", () => { mine = true; });

    // Words at their places, drawn over the picture.
    function place() {
        const width = host.clientWidth, height = host.clientHeight, at = new THREE.Vector3();
        for (const label of overlay.children) {
            at.fromArray(label.at).applyMatrix4(stage.matrixWorld).project(camera);
            label.setAttribute("transform", `translate(${((at.x + 1) / 2 * width).toFixed(1)} ${((1 - at.y) / 2 * height).toFixed(1)})`);
        }
    }
    function label(from) {
        overlay.replaceChildren(...from.map(one => {
            const group = document.createElementNS(overlay.namespaceURI, "g"), text = document.createElementNS(overlay.namespaceURI, "text");
            group.at = one.at;
            if (one.mark === "disc" || one.mark === "ring" || one.mark === "cross") {
                const mark = document.createElementNS(overlay.namespaceURI, one.mark === "cross" ? "path" : "circle");
                mark.setAttribute("class", one.mark);
                if (one.mark === "cross")
                    mark.setAttribute("d", "M-6 0H6M0 -6V6");
                else
                    mark.setAttribute("r", "4.5");
                group.append(mark);
            }
            text.textContent = one.words;
            text.setAttribute("x", one.mark === "none" ? "0" : "9");
            text.setAttribute("y", one.mark === "none" ? "14" : "4");
            text.setAttribute("text-anchor", one.mark === "none" ? "middle" : "start");
            group.append(text);
            return group;
        }));
    }

    function size() {
        const width = host.clientWidth, height = host.clientHeight;
        if (!width || !height)
            return;
        renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
        renderer.setSize(width, height);
        pixel.set(2 / width, 2 / height);
        // The fin stands above the buttons, not behind them.
        const buttons = host.parentElement.querySelector(".views")?.offsetHeight ?? 0, foot = buttons > 0 && height > 3 * buttons ? buttons + 12 : 0;
        camera.aspect = width / (height - foot);
        camera.setViewOffset(width, height - foot, 0, 0, width, height);
        camera.updateProjectionMatrix();
        if (!mine && file)
            look();
        ask();
    }
    const watch = new ResizeObserver(size);
    watch.observe(host);

    const ways = { side: [0, 0, 1], back: [0, 0, -1], front: [-1, 0, 0.0001], below: [0, -1, 0.0001], free: [-0.45, 0.18, 1], bed: [-0.35, 0.75, 1], bent: [-0.9, 0.14, 0.7], pressure: [-0.45, 0.14, -1] };
    // The suction side first; bending from where it is seen.
    const usual = () => file?.about.isBed ? "bed" : file?.about.view ?? "free";
    // Brings a box into view as large as it goes.
    function look(way = usual(), box = bounds(), room = 1.06) {
        if (box.isEmpty())
            return;
        const back = new THREE.Vector3(...ways[way]).normalize(), right = new THREE.Vector3(0, 1, 0).cross(back).normalize(), up = back.clone().cross(right);
        const centre = box.getCenter(new THREE.Vector3()), corner = new THREE.Vector3();
        let wide = 0, tall = 0, deep = 0;
        for (let i = 0; i < 8; i++) {
            corner.set(i & 1 ? box.min.x : box.max.x, i & 2 ? box.min.y : box.max.y, i & 4 ? box.min.z : box.max.z).sub(centre);
            wide = Math.max(wide, Math.abs(corner.dot(right)));
            tall = Math.max(tall, Math.abs(corner.dot(up)));
            deep = Math.max(deep, Math.abs(corner.dot(back)));
        }
        const half = Math.tan(camera.fov * Math.PI / 360), share = file?.about.scale && host.clientWidth > 0 ? Math.max(0.6, 1 - 130 / host.clientWidth) : 1;
        const away = Math.max(tall / half, wide / (half * camera.aspect * share)) * room + deep;
        controls.target.copy(centre);
        camera.position.copy(centre).addScaledVector(back, away);
        camera.near = away / 60;
        camera.far = away * 12;
        camera.updateProjectionMatrix();
        controls.update();
        reached = box.getSize(new THREE.Vector3()).length();
        ask();
    }
    function bounds(only = null) {
        stage.updateMatrixWorld(true);
        const box = new THREE.Box3();
        for (const one of live)
            if (only === null || one.part.tone === only)
                box.expandByObject(one.object);
        return box;
    }

    const skins = new Set(["blade", "base", "metal", "nut", "rod", "air", "move"]);
    function paint(uniforms, options = {}) {
        return new THREE.ShaderMaterial({
            vertexShader: vertex, fragmentShader: fragment, side: THREE.DoubleSide, ...options,
            uniforms: {
                tone: { value: tones.blade }, ink: { value: tones.ink }, quiet: { value: tones.quiet }, fails: { value: tones.fails }, alpha: { value: 1 }, rim: { value: 0 }, grow: { value: 0 }, pixel: { value: pixel },
                isField: { value: false }, hasLimit: { value: false }, isDashed: { value: false }, isFlat: { value: false }, first: { value: 0 }, size: { value: 1 }, bands: { value: 1 }, limit: { value: 0 }, ramp: { value: null },
                ...uniforms,
            },
        });
    }
    function materials(part) {
        const scale = file.about.scale;
        if (part.tone === "ghost" || part.tone === "now") {
            const ref = part.tone === "ghost" ? 1 : 2, common = { depthTest: false, depthWrite: false, stencilWrite: true, stencilRef: ref };
            return [
                paint({}, { ...common, colorWrite: false, stencilZPass: THREE.ReplaceStencilOp }),
                paint({ tone: { value: part.tone === "ghost" ? tones.quiet : tones.ink }, grow: { value: 1.8 }, isDashed: { value: part.tone === "ghost" }, isFlat: { value: true } }, { ...common, stencilFunc: THREE.NotEqualStencilFunc }),
            ];
        }
        if (part.tone.startsWith("clear"))
            return [paint({ tone: { value: tones[part.tone] }, alpha: { value: 0.14 }, rim: { value: 1 } }, { transparent: true, depthWrite: false })];
        const field = part.value && scale ? {
            isField: { value: true }, first: { value: scale.first }, size: { value: scale.step }, bands: { value: scale.colours.length }, ramp: { value: ramp },
            hasLimit: { value: scale.limit != null }, limit: { value: scale.limit ?? 0 },
        } : {};
        const outer = part.tone === "move" ? { transparent: true, depthTest: false } : {};
        return [
            paint({ tone: { value: tones[part.tone] ?? tones.blade }, ...field }, outer),
            ...(part.tone === "move" ? [] : [paint({ tone: { value: tones.ink }, grow: { value: 1.2 }, isFlat: { value: true } }, { side: THREE.BackSide })]),
        ];
    }
    function make(part) {
        if (part.lines) {
            const geometry = new THREE.BufferGeometry().setAttribute("position", new THREE.BufferAttribute(part.lines, 3));
            const colour = tones[part.tone] ?? tones.ink;
            const object = new THREE.LineSegments(geometry, new THREE.LineBasicMaterial({ color: new THREE.Color().setRGB(colour.x, colour.y, colour.z, THREE.SRGBColorSpace), depthTest: part.tone !== "move" }));
            object.renderOrder = part.tone === "move" ? 6 : 0;
            return { part, object, geometry };
        }
        const geometry = new THREE.BufferGeometry(), object = new THREE.Group();
        geometry.setAttribute("position", new THREE.BufferAttribute(new Float32Array(part.position), 3));
        geometry.setIndex(new THREE.BufferAttribute(part.index, 1));
        geometry.setAttribute("value", new THREE.BufferAttribute(part.value ?? new Float32Array(part.position.length / 3), 1));
        materials(part).forEach((material, i) => {
            const mesh = new THREE.Mesh(geometry, material);
            mesh.renderOrder = part.tone === "ghost" ? 3 + i : part.tone === "now" ? 5 + i : part.tone === "move" ? 8 : part.tone.startsWith("clear") ? 2 : 0;
            object.add(mesh);
        });
        const made = { part, object, geometry };
        form(made);
        return made;
    }
    // Places the vertices, bent as far as is asked for.
    function form(made) {
        const { part, geometry } = made;
        if (!part.position)
            return;
        const at = geometry.attributes.position;
        at.array.set(part.position);
        if (part.shift)
            for (let i = 0; i < at.array.length; i++)
                at.array[i] += factor * part.shift[i];
        at.needsUpdate = true;
        geometry.computeVertexNormals();
        geometry.computeBoundingSphere();
        geometry.computeBoundingBox();
    }
    function drop(made) {
        made.geometry.dispose();
        made.object.material?.dispose();
        for (const mesh of made.object.children)
            mesh.material.dispose();
        stage.remove(made.object);
    }
    // The same part with as many vertices and triangles goes into the arrays that are there.
    function renew(made, part) {
        if (!made.part.position || !part.position || made.part.tone !== part.tone || made.part.position.length !== part.position.length || made.part.index.length !== part.index.length || !!made.part.value !== !!part.value)
            return false;
        made.part = part;
        made.geometry.index.array.set(part.index);
        made.geometry.index.needsUpdate = true;
        if (part.value) {
            made.geometry.attributes.value.array.set(part.value);
            made.geometry.attributes.value.needsUpdate = true;
        }
        form(made);
        return true;
    }
    const scaleOf = about => JSON.stringify(about.scale ?? null);

    function put(next) {
        const sameScale = file !== null && scaleOf(file.about) === scaleOf(next.about);
        file = next;
        if (next.about.factor !== factorSaid)
            factor = factorSaid = next.about.factor ?? 1;
        if (!sameScale) {
            ramp?.dispose();
            ramp = null;
            if (next.about.scale) {
                const colours = next.about.scale.colours, bytes = new Uint8Array(4 * colours.length);
                colours.forEach((colour, i) => bytes.set([parseInt(colour.slice(1, 3), 16), parseInt(colour.slice(3, 5), 16), parseInt(colour.slice(5, 7), 16), 255], 4 * i));
                ramp = new THREE.DataTexture(bytes, colours.length, 1);
                ramp.needsUpdate = true;
            }
        }
        const keep = sameScale && live.length === next.parts.length && next.parts.every((part, i) => renew(live[i], part));
        if (!keep) {
            live.forEach(drop);
            live = next.parts.map(make);
            for (const one of live)
                stage.add(one.object);
        }
        label(next.labels);
        host.dataset.parts = String(live.length);
        const now = next.about.isBed ? "bed" : next.about.isHeld ? "held" : next.about.view ?? "fin", reach = bounds().getSize(new THREE.Vector3()).length();
        const lit = next.about.isPointed ? next.parts.filter(part => part.tone === "move").map(part => part.name).join() : "";
        if (now !== kind || reached === 0 || (!mine && Math.abs(reach - reached) > 0.02 * reached) || (!lit && (reach > 1.4 * reached || reach < reached / 1.8))) {
            kind = now;
            mine = false;
            look();
        }
        if (lit && lit !== pointed) {
            look("free", bounds("move").expandByScalar(0.02), 1.6);
            mine = true;
        }
        pointed = lit;
        ask();
    }

    async function fetchLatest() {
        if (under)
            return;
        under = true;
        while (wanted && !closed) {
            const { address, surface } = wanted, mark = { input: moved, asked: wanted.asked };
            wanted = null;
            try {
                const answer = await fetch(address, { cache: "no-store" }), isThere = answer.status === 200;
                if (isThere && !closed) {
                    const next = read(await answer.arrayBuffer());
                    mark.fetched = performance.now();
                    put(next);
                    mark.put = performance.now();
                    mark.version = next.about.version;
                    mark.surface = surface;
                    stamp = mark;
                }
                host.dataset.shown = isThere ? address : "";
            } catch (fault) {
                // The page lost Finwright: it comes back with a reload. Anything else is a fault to be seen.
                if (!(fault instanceof TypeError))
                    console.error(fault);
            }
        }
        under = false;
    }

    // What is under the pointer, in words.
    const ray = new THREE.Raycaster(), said = figure.querySelector("[data-picked]");
    let pointer = null;
    function tell() {
        const event = pointer;
        pointer = null;
        if (!event || closed || !file)
            return;
        const frame = host.getBoundingClientRect();
        ray.setFromCamera(new THREE.Vector2(2 * (event.clientX - frame.left) / frame.width - 1, 1 - 2 * (event.clientY - frame.top) / frame.height), camera);
        const meshes = live.filter(one => one.part.position && one.part.tone !== "ghost" && one.part.tone !== "now" && !one.part.tone.startsWith("clear"));
        const hits = ray.intersectObjects(meshes.map(one => one.object.children[0]), false), hit = hits[0];
        const one = hit && meshes.find(mesh => mesh.object === hit.object.parent);
        said.textContent = !one ? "" : one.part.value && file.about.scale ? words(one, hit) : one.part.tone === "blade" || one.part.tone === "base" ? "" : one.part.name;
    }
    function words(one, hit) {
        const scale = file.about.scale, value = one.part.value, { a, b, c } = hit.face, position = one.geometry.attributes.position, p = one.object.worldToLocal(hit.point.clone());
        const corners = [a, b, c].map(i => new THREE.Vector3().fromBufferAttribute(position, i)), weights = THREE.Triangle.getBarycoord(p, ...corners, new THREE.Vector3());
        const number = (x, decimals) => x.toFixed(decimals).replace("-", "\u2212").replace(".", scale.comma ? "," : ".");
        const at = value[a] * weights.x + value[b] * weights.y + value[c] * weights.z;
        const told = Math.min(value[a], value[b], value[c]) <= NotKnown / 10 ? scale.notKnown : `${number(at, scale.decimals)} ${scale.unit}`;
        const length = x => `${number(x * scale.perMetre, scale.length === "in" ? 1 : 0)} ${scale.length}`;
        return scale.words.replace("{0}", told).replace("{1}", length(p.y)).replace("{2}", length(p.x));
    }
    function onPoint(event) {
        if (event.buttons && event.type === "pointermove")
            return;
        if (!pointer)
            requestAnimationFrame(tell);
        pointer = event;
    }
    renderer.domElement.addEventListener("pointermove", onPoint);
    renderer.domElement.addEventListener("pointerdown", onPoint);
    renderer.domElement.addEventListener("pointerleave", () => { said.textContent = ""; });
    renderer.domElement.addEventListener("dblclick", () => { mine = false; look(); });

    function large(on) {
        const button = figure.querySelector("[data-view=large]");
        figure.toggleAttribute("data-large", on);
        button.setAttribute("aria-pressed", String(on));
    }
    function onClick(event) {
        const view = event.target.closest?.("[data-view]")?.dataset.view;
        if (!view)
            return;
        if (view === "large") {
            large(!figure.hasAttribute("data-large"));
            return;
        }
        mine = view !== "free";
        look(view === "free" ? usual() : view);
    }
    function onInput(event) {
        if (!event.target.matches?.("[data-factor]"))
            return;
        factor = Number(event.target.value);
        const told = figure.querySelector("[data-factor-said]");
        if (told)
            told.textContent = `${String(factor).replace(".", file?.about.scale?.comma ? "," : ".")} ×`;
        live.forEach(form);
        ask();
    }
    function onKey(event) {
        if (event.key === "Escape" && figure.hasAttribute("data-large")) {
            large(false);
            return;
        }
        if (event.target !== host)
            return;
        const turn = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
        const offset = camera.position.clone().sub(controls.target), round = new THREE.Spherical().setFromVector3(offset);
        if (turn) {
            round.theta += turn[0] * 0.12;
            round.phi = Math.min(Math.max(round.phi + turn[1] * 0.12, 0.05), Math.PI - 0.05);
        } else if (event.key === "+" || event.key === "-") {
            round.radius *= event.key === "+" ? 0.9 : 1.1;
        } else if (event.key === "Home") {
            event.preventDefault();
            mine = false;
            look();
            return;
        } else {
            return;
        }
        event.preventDefault();
        mine = true;
        camera.position.copy(controls.target).add(offset.setFromSpherical(round));
        controls.update();
        ask();
    }
    figure.addEventListener("click", onClick);
    figure.addEventListener("input", onInput);
    addEventListener("keydown", onKey);

    // On a narrow screen the strip is pulled down by its edge as well as by its button.
    const pull = figure.querySelector(".pull");
    let from = null;
    function onPull(event) {
        if (event.type === "pointerdown") {
            from = event.clientY;
            pull.setPointerCapture(event.pointerId);
        } else if (from !== null && event.type === "pointermove") {
            const down = pull.getAttribute("aria-expanded") === "true", way = event.clientY - from;
            if (down ? way < -24 : way > 24) {
                from = null;
                pull.click();
                pull.dataset.pulled = "true";
            }
        } else {
            from = null;
        }
    }
    function onPulled(event) {
        // The click that ends a pull is not a second one.
        if (event.isTrusted && pull.dataset.pulled) {
            event.stopImmediatePropagation();
            event.preventDefault();
        }
        if (event.isTrusted)
            delete pull.dataset.pulled;
    }
    for (const type of ["pointerdown", "pointermove", "pointerup", "pointercancel"])
        pull?.addEventListener(type, onPull);
    pull?.addEventListener("click", onPulled, true);

    // Light or dark: everything is painted anew.
    function recolour() {
        tones = inks();
        if (file) {
            const again = file;
            live.forEach(drop);
            live = [];
            file = null;
            put(again);
        }
    }
    const dark = matchMedia("(prefers-color-scheme: dark)"), theme = new MutationObserver(recolour);
    dark.addEventListener("change", recolour);
    theme.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
    renderer.domElement.addEventListener("webglcontextlost", event => { event.preventDefault(); host.dataset.lost = "true"; });
    renderer.domElement.addEventListener("webglcontextrestored", () => { delete host.dataset.lost; recolour(); });

    size();
    return {
        show(address, surface) { wanted = { address, surface, asked: performance.now() }; fetchLatest(); },
        close() {
            closed = true;
            watch.disconnect();
            theme.disconnect();
            dark.removeEventListener("change", recolour);
            removeEventListener("keydown", onKey);
            figure.removeEventListener("click", onClick);
            figure.removeEventListener("input", onInput);
            controls.dispose();
            live.forEach(drop);
            ramp?.dispose();
            renderer.dispose();
            renderer.forceContextLoss();
            host.replaceChildren();
        },
    };
}
