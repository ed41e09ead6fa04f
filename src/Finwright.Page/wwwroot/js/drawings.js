// The hand on a drawing: drags what carries data-handle, with one call under way at a time, the latest place winning; keys do the same.
export function hand(svg, drawing) {
    let held = null, wanted = null, under = false, ended = null;

    const sized = look(svg);

    function place(event) {
        const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
        return [at.x, at.y];
    }

    async function send() {
        if (under)
            return;
        under = true;
        try {
            while (wanted) {
                const [id, x, y] = wanted;
                wanted = null;
                await drawing.invokeMethodAsync("Move", id, x, y);
            }
            if (ended) {
                const how = ended;
                ended = null;
                await drawing.invokeMethodAsync(how);
            }
        } catch {
            // The page lost Finwright: it comes back with a reload.
        }
        under = false;
        if (wanted || ended)
            send();
    }

    function down(event) {
        const handle = event.target.closest("[data-handle]");
        if (!handle || event.button !== 0 || held)
            return;
        const [x, y] = place(event);
        held = { id: handle.dataset.handle, pointer: event.pointerId, dx: Number(handle.dataset.x) - x, dy: Number(handle.dataset.y) - y, moved: false, from: [event.clientX, event.clientY] };
        svg.setPointerCapture(event.pointerId);
        handle.focus({ preventScroll: true });
        event.preventDefault();
    }
    function move(event) {
        if (!held || event.pointerId !== held.pointer)
            return;
        // A trembling click moves nothing.
        if (!held.moved && Math.hypot(event.clientX - held.from[0], event.clientY - held.from[1]) < 2)
            return;
        held.moved = true;
        svg.classList.add("held");
        const [x, y] = place(event);
        wanted = [held.id, x + held.dx, y + held.dy];
        send();
    }
    function end(how) {
        if (!held)
            return;
        const moved = held.moved;
        held = null;
        svg.classList.remove("held");
        if (!moved)
            return;
        if (how === "Cancel")
            wanted = null;
        ended = how;
        send();
    }
    const up = event => { if (event.pointerId === held?.pointer) end("LetGo"); };
    const lost = event => { if (event.pointerId === held?.pointer) end("LetGo"); };

    let keyed = false;
    function key(event) {
        if (event.key === "Escape" && (held || keyed)) {
            event.preventDefault();
            if (held) {
                end("Cancel");
            } else {
                keyed = false;
                ended = "Cancel";
                send();
            }
            return;
        }
        const handle = event.target.closest?.("[data-handle]");
        if (!handle || event.ctrlKey || event.metaKey)
            return;
        const id = handle.dataset.handle;
        if (event.key === "Insert" || event.key === "+" || event.key === "Delete") {
            if (!/point/.test(id))
                return;
            event.preventDefault();
            drawing.invokeMethodAsync("Points", id, event.key !== "Delete").catch(() => { });
            return;
        }
        const step = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
        const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
        if (!way)
            return;
        event.preventDefault();
        keyed = true;
        drawing.invokeMethodAsync("Nudge", id, way[0] * step, way[1] * step).catch(() => { });
    }
    // Keys pressed one after the other are one step, until the hand goes elsewhere or rests.
    let rest = null;
    function keyUp(event) {
        if (!keyed || !event.key.startsWith("Arrow"))
            return;
        clearTimeout(rest);
        rest = setTimeout(settle, 900);
    }
    function settle() {
        clearTimeout(rest);
        if (!keyed)
            return;
        keyed = false;
        ended = "LetGo";
        send();
    }

    svg.addEventListener("pointerdown", down);
    svg.addEventListener("pointermove", move);
    svg.addEventListener("pointerup", up);
    svg.addEventListener("pointercancel", lost);
    svg.addEventListener("focusout", settle);
    svg.addEventListener("keyup", keyUp);
    addEventListener("keydown", key);
    return {
        close() {
            sized.close();
            removeEventListener("keydown", key);
        },
    };
}

// Text and marks keep their size on the screen: the style sheet reads how many millimetres a pixel is.
export function look(svg) {
    const scale = () => {
        const box = svg.viewBox.baseVal, width = svg.clientWidth, height = svg.clientHeight;
        if (width > 0 && height > 0 && box.width > 0)
            svg.style.setProperty("--px", String(Math.max(box.width / width, box.height / height)));
    };
    const size = new ResizeObserver(scale), view = new MutationObserver(scale);
    size.observe(svg);
    view.observe(svg, { attributes: true, attributeFilter: ["viewBox"] });
    scale();
    return { close() { size.disconnect(); view.disconnect(); } };
}
