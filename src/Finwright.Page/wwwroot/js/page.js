// What every page needs of the browser: the mark that it listens, the way back after Finwright was restarted, keys for undo and redo.
const state = { run: null };

async function health() {
    const answer = await fetch("/api/health", { cache: "no-store" });
    return answer.ok ? answer.text() : null;
}

window.finwright = {
    isLive() { document.body.dataset.live = "true"; },
    focus(id) {
        // A field that is not on the page now: the group around it.
        let element = document.getElementById(id);
        for (let around = id; !element && around.includes("-"); element = document.getElementById(around))
            around = around.slice(0, around.lastIndexOf("-"));
        for (let fold = element?.closest("details"); fold; fold = fold.parentElement.closest("details"))
            fold.open = true;
        element?.scrollIntoView({ block: "center" });
        element?.focus();
    },
    theme(name) { document.documentElement.dataset.theme = name; },
    showDialog(element) { element.showModal(); },
    closeDialog(element) { element.close(); },
    setQuery(name, value) {
        const address = new URL(location.href);
        if (value)
            address.searchParams.set(name, value);
        else
            address.searchParams.delete(name);
        history.replaceState(history.state, "", address);
    },
};

// The framework's own attempts take long after a restart: asking once a second brings the page back as soon as Finwright is there.
const dialog = document.getElementById("components-reconnect-modal");
let waiting = null;
document.addEventListener("components-reconnect-state-changed", onReconnect, true);
dialog.addEventListener("components-reconnect-state-changed", onReconnect);
function onReconnect(event) {
    if (event.detail.state === "hide") {
        clearInterval(waiting);
        waiting = null;
        dialog.close();
        return;
    }
    if (!dialog.open)
        dialog.showModal();
    waiting ??= setInterval(async () => {
        try {
            const run = await health();
            if (run && run !== state.run)
                location.reload();
        } catch {
            // Not there yet.
        }
    }, 1000);
}
health().then(run => { state.run = run; }, () => { });

// Where the reader was comes back: on the page after a reload, and the page itself when the browser was closed or killed.
const placesKey = "finwright-places", mostPlaces = 40;
function places() {
    try {
        return JSON.parse(localStorage.getItem(placesKey)) ?? [];
    } catch {
        return [];
    }
}
function notePlace(y = scrollY) {
    const here = location.pathname + location.search;
    const others = places().filter(place => place.path !== here);
    localStorage.setItem(placesKey, JSON.stringify([{ path: here, y }, ...others].slice(0, mostPlaces)));
}
let noting = null;
addEventListener("scroll", () => {
    clearTimeout(noting);
    noting = setTimeout(() => notePlace(), 150);
}, { passive: true });
history.scrollRestoration = "manual";
if (location.hash === "#back") {
    // Let in anew: to the page that was open last, if there was one.
    const last = places()[0];
    history.replaceState(null, "", location.pathname);
    if (last && last.path !== "/" && last.path.startsWith("/") && !last.path.startsWith("//"))
        location.replace(last.path);
}
function comeBack() {
    const was = location.hash ? 0 : places().find(place => place.path === location.pathname + location.search)?.y ?? 0;
    notePlace(was);
    if (was <= 0)
        return;
    const reach = () => scrollTo(0, was);
    reach();
    // The page grows while it is drawn; a hand that moves it has the last word.
    const grown = new ResizeObserver(reach);
    grown.observe(document.body);
    for (const moved of ["wheel", "pointerdown", "keydown", "touchstart"])
        addEventListener(moved, () => grown.disconnect(), { once: true, passive: true });
    setTimeout(() => grown.disconnect(), 3000);
}
comeBack();
// From one room to another without asking for a whole page.
window.navigation?.addEventListener("currententrychange", () => notePlace(0));

// What scrolls sideways is reached by the keyboard too, and only then.
let looking = null;
function reachScrolls() {
    for (const frame of document.querySelectorAll(".wide, .verdicts")) {
        const scrolls = frame.scrollWidth > frame.clientWidth + 1 || (frame.scrollHeight > frame.clientHeight + 1 && getComputedStyle(frame).overflowY !== "visible");
        if (scrolls && !frame.hasAttribute("tabindex"))
            frame.tabIndex = 0;
        else if (!scrolls && frame.getAttribute("tabindex") === "0")
            frame.removeAttribute("tabindex");
    }
}
function lookAgain() {
    if (looking !== null)
        return;
    looking = setTimeout(() => { looking = null; reachScrolls(); }, 250);
    reachScrolls();
}
new MutationObserver(lookAgain).observe(document.body, { childList: true, subtree: true });
addEventListener("resize", lookAgain);
lookAgain();
