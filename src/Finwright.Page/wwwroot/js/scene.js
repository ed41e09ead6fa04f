// The fin in three dimensions. Draws only when something moved; takes scene files (see SceneFile) and shows the latest.
import * as THREE from "three";
import { OrbitControls } from "three/controls";

const css = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

// A colour of the page's tokens, which may be written as light-dark(…): the browser resolves it on an element.
function token(name) {
    const probe = document.createElement("span");
    probe.hidden = true;
    document.body.append(probe);
    probe.style.color = `var(${name})`;
    const colour = new THREE.Color(getComputedStyle(probe).color);
    probe.remove();
    return colour;
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
        about: header.about,
        parts: header.parts.map(part => ({
            ...part,
            position: floats(part.position), index: ints(part.index), value: floats(part.value), shift: floats(part.shift), lines: floats(part.lines),
        })),
    };
}

export function open(host) {
    const renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true, preserveDrawingBuffer: true });
    host.replaceChildren(renderer.domElement);
    const scene = new THREE.Scene();
    const camera = new THREE.PerspectiveCamera(28, 1, 0.01, 20);
    // Design axes have y down; turned about x, the tip points down on the screen and the nose stays to the left.
    const stage = new THREE.Group();
    stage.rotation.x = Math.PI;
    scene.add(stage, new THREE.HemisphereLight(0xffffff, 0x8899aa, 1.6));
    const lamp = new THREE.DirectionalLight(0xffffff, 2.2);
    camera.add(lamp);
    lamp.position.set(-0.6, 0.8, 1);
    scene.add(camera);
    const controls = new OrbitControls(camera, renderer.domElement);
    controls.enablePan = true;
    let framed = null, wanted = null, under = false, due = false, closed = false;

    function draw() {
        due = false;
        if (closed)
            return;
        renderer.render(scene, camera);
        host.dataset.frames = String(Number(host.dataset.frames ?? 0) + 1);
    }
    function ask() {
        if (!due) {
            due = true;
            requestAnimationFrame(draw);
        }
    }
    controls.addEventListener("change", ask);

    function size() {
        const width = host.clientWidth, height = host.clientHeight;
        if (!width || !height)
            return;
        renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
        renderer.setSize(width, height);
        camera.aspect = width / height;
        camera.updateProjectionMatrix();
        ask();
    }
    const watch = new ResizeObserver(size);
    watch.observe(host);

    function frame(box) {
        const centre = box.getCenter(new THREE.Vector3()), reach = box.getSize(new THREE.Vector3()).length() / 2;
        const away = reach / Math.sin(Math.min(camera.fov, camera.fov * camera.aspect) * Math.PI / 360);
        controls.target.copy(centre);
        camera.position.copy(centre).add(new THREE.Vector3(-0.45, 0.18, 1).normalize().multiplyScalar(away * 1.02));
        camera.near = away / 50;
        camera.far = away * 10;
        camera.updateProjectionMatrix();
        controls.update();
        framed = reach;
    }

    function put(file) {
        for (const old of [...stage.children]) {
            old.geometry?.dispose();
            old.material?.dispose();
            stage.remove(old);
        }
        for (const part of file.parts) {
            const geometry = new THREE.BufferGeometry();
            geometry.setAttribute("position", new THREE.BufferAttribute(part.position, 3));
            geometry.setIndex(new THREE.BufferAttribute(part.index, 1));
            geometry.computeVertexNormals();
            const paint = new THREE.MeshStandardMaterial({ color: token("--water").lerp(token("--paper"), 0.55), roughness: 0.7, side: THREE.DoubleSide });
            stage.add(new THREE.Mesh(geometry, paint));
        }
        stage.updateMatrixWorld(true);
        const box = new THREE.Box3().setFromObject(stage);
        const reach = box.getSize(new THREE.Vector3()).length() / 2;
        if (framed === null || reach > 1.3 * framed || reach < framed / 1.6)
            frame(box);
        ask();
    }

    async function fetchLatest() {
        if (under)
            return;
        under = true;
        while (wanted) {
            const address = wanted;
            wanted = null;
            try {
                const answer = await fetch(address, { cache: "no-store" });
                if (answer.ok && !closed)
                    put(read(await answer.arrayBuffer()));
                host.dataset.shown = answer.ok ? address : "";
            } catch {
                // The page lost Finwright: it comes back with a reload.
            }
        }
        under = false;
    }

    host.addEventListener("keydown", event => {
        const turn = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
        const offset = camera.position.clone().sub(controls.target), round = new THREE.Spherical().setFromVector3(offset);
        if (turn) {
            round.theta += turn[0] * 0.12;
            round.phi = Math.min(Math.max(round.phi + turn[1] * 0.12, 0.05), Math.PI - 0.05);
        } else if (event.key === "+" || event.key === "-") {
            round.radius *= event.key === "+" ? 0.9 : 1.1;
        } else {
            return;
        }
        event.preventDefault();
        camera.position.copy(controls.target).add(offset.setFromSpherical(round));
        controls.update();
        ask();
    });

    size();
    return {
        show(address) { wanted = address; fetchLatest(); },
        close() {
            closed = true;
            watch.disconnect();
            controls.dispose();
            renderer.dispose();
            host.replaceChildren();
        },
    };
}
