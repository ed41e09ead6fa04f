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
// A place is a chapter and how far into it: the chapters before it are taller or shorter once their numbers are there.
function placeHere() {
    const path = location.pathname + location.search;
    let chapter = null;
    for (const each of document.querySelectorAll(".chapter[id]"))
        if (each.getBoundingClientRect().top < innerHeight / 2)
            chapter = each;
    return chapter ? { path, y: scrollY, chapter: chapter.id, into: -chapter.getBoundingClientRect().top } : { path, y: scrollY };
}
function notePlace(place = placeHere()) {
    const others = places().filter(other => other.path !== place.path);
    localStorage.setItem(placesKey, JSON.stringify([place, ...others].slice(0, mostPlaces)));
}
function heightOf(place) {
    const chapter = place.chapter && document.getElementById(place.chapter);
    return chapter ? chapter.getBoundingClientRect().top + scrollY + place.into : place.y;
}
// On the way back the page is not yet where its reader was, and what is kept must not become where it happens to be.
let noting = null, returning = false;
const mostReturningMs = 60000;
addEventListener("scroll", () => {
    clearTimeout(noting);
    noting = setTimeout(() => { if (!returning) notePlace(); }, 150);
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
    const path = location.pathname + location.search;
    const was = location.hash ? null : places().find(place => place.path === path);
    notePlace(was ?? { path, y: 0 });
    if (!was || was.y <= 0)
        return;
    // The page grows while it is drawn and while its numbers come in; a hand that moves it has the last word.
    returning = true;
    const reach = () => scrollTo(0, heightOf(was));
    const grown = new ResizeObserver(reach);
    grown.observe(document.body);
    const there = () => {
        grown.disconnect();
        returning = false;
    };
    for (const moved of ["wheel", "pointerdown", "keydown", "touchstart"])
        addEventListener(moved, there, { once: true, passive: true });
    setTimeout(there, mostReturningMs);
    // The browser's own buttons lead to another page without a touch of this one.
    window.navigation?.addEventListener("currententrychange", () => {
        if (location.pathname + location.search !== path)
            there();
    });
    reach();
}
comeBack();
// From one room to another without asking for a whole page.
window.navigation?.addEventListener("currententrychange", () => notePlace({ path: location.pathname + location.search, y: 0 }));

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
