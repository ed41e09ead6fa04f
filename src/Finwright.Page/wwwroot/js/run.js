// A run sheet: ticks, clocks, readings and notes. What is entered is kept in this browser first and sent as soon as Finwright is in
// reach; of two values of one thing the later counts, wherever it was entered.
import { judge } from "./judge.js";

const sheet = document.getElementById("sheet");
const words = JSON.parse(sheet.dataset.words), lang = sheet.dataset.lang, fahrenheit = sheet.dataset.fahrenheit === "yes";
const address = "/run/" + sheet.dataset.id + "/entries", place = "run:" + sheet.dataset.id;
const first = JSON.parse(sheet.dataset.state);
// The clock of this device may be off; everything is told in that of Finwright's computer.
let offset = first.now - Date.now();
let entries = new Map(), pending = new Set(), refused = "", isReached = true, isSending = false;

const now = () => Date.now() + offset;
const say = (text, ...values) => text.replace(/\{(\d)\}/g, (_, i) => values[Number(i)]);
const number = (value, digits) => new Intl.NumberFormat(lang, { minimumFractionDigits: digits, maximumFractionDigits: digits }).format(value);
const warmth = kelvin => fahrenheit ? number(1.8 * (kelvin - 273.15) + 32, 0) + " °F" : number(kelvin - 273.15, 1) + " °C";
const clock = ms => {
    const at = new Date(ms - offset), today = new Date();
    const time = at.toLocaleTimeString(lang, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
    return at.toDateString() === today.toDateString() ? time : at.toLocaleDateString(lang, { weekday: "short" }) + " " + time;
};
function length(ms) {
    const all = Math.max(0, Math.round(ms / 1000)), hours = Math.floor(all / 3600), minutes = Math.floor(all / 60) % 60, seconds = all % 60;
    const two = value => String(value).padStart(2, "0");
    return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
}

function take(list) {
    for (const entry of list) {
        const own = entries.get(entry.key);
        if (!own || entry.at > own.at)
            entries.set(entry.key, { value: entry.value, at: entry.at });
    }
}

function remember() {
    try {
        localStorage.setItem(place, JSON.stringify({ pending: [...pending].map(key => ({ key, ...entries.get(key) })) }));
    } catch {
        // No room, or not allowed: it is still sent.
    }
}

const value = key => entries.get(key)?.value ?? "";
const started = step => { const text = value(step + ":timer"); return text ? Date.parse(text) : null; };

function set(key, text) {
    const last = entries.get(key)?.at ?? 0;
    entries.set(key, { value: text, at: Math.max(Math.round(now()), last + 1) });
    pending.add(key);
    remember();
    show();
    send();
}

async function send() {
    if (isSending)
        return;
    isSending = true;
    const sent = [...pending].slice(0, 400).map(key => ({ key, ...entries.get(key) }));
    try {
        const began = Date.now();
        const answer = sent.length > 0
            ? await fetch(address, { method: "POST", headers: { "Content-Type": "application/json", "X-Finwright": "run" }, body: JSON.stringify(sent), cache: "no-store" })
            : await fetch(address, { cache: "no-store" });
        if (answer.ok) {
            const state = await answer.json();
            offset = state.now - (began + Date.now()) / 2;
            for (const entry of sent)
                if (entries.get(entry.key).at === entry.at)
                    pending.delete(entry.key);
            take(state.entries);
            [isReached, refused] = [true, ""];
        } else if (answer.status === 403 || answer.status === 401) {
            [isReached, refused] = [true, words.gone];
        } else {
            const said = await answer.json().catch(() => null);
            [isReached, refused] = [true, say(words.refused, said ? said.message + " " + said.remedy : String(answer.status))];
        }
        remember();
    } catch {
        isReached = false;
    }
    isSending = false;
    show();
    if (isReached && !refused && pending.size > 0)
        send();
}

function judgedReading(form, kelvin, at) {
    const limit = Number(form.dataset.limit) || null, start = started(form.dataset.of);
    const { state, expected } = judge(limit, JSON.parse(form.dataset.curve), kelvin, start === null ? null : (at - start) / 1000);
    const told = state === "danger" ? [limit] : state === "unknown" ? [] : [expected[1], expected[3]];
    return { state, text: say(words[state], warmth(kelvin), ...told.map(warmth)) };
}

function readingsOf(part) {
    const all = [];
    for (const [key, entry] of entries) {
        if (!key.startsWith("reading:") || !entry.value)
            continue;
        const reading = JSON.parse(entry.value);
        if (reading.part === part)
            all.push({ key, kelvin: reading.kelvin, at: Date.parse(reading.at) });
    }
    return all.sort((a, b) => b.at - a.at);
}

let said = new Map();
function put(element, text) {
    if (element.textContent !== text)
        element.textContent = text;
}

function show() {
    let done = 0, all = 0;
    for (const step of sheet.querySelectorAll(".step")) {
        const id = step.dataset.step, ticked = value(id + ":tick") === "yes";
        all++;
        done += ticked ? 1 : 0;
        step.classList.toggle("done", ticked);
        step.querySelector(".tick input").checked = ticked;
        const note = step.querySelector("textarea");
        if (document.activeElement !== note && note.value !== value(id + ":note")) {
            note.value = value(id + ":note");
            if (note.value)
                note.closest("details").open = true;
        }
    }
    for (const form of sheet.querySelectorAll(".thermometer"))
        showReadings(form);
    put(document.getElementById("progress"), say(words.progress, done, all));
    const state = document.getElementById("state");
    put(state, refused || (pending.size > 0 ? isReached ? words.sending : say(words.waiting, pending.size) : isReached ? words.kept : say(words.waiting, 0)));
    state.className = refused ? "wrong" : !isReached ? "late" : "";
    tick();
}

function showReadings(form) {
    const list = form.querySelector(".readings"), readings = readingsOf(form.dataset.part);
    const shape = JSON.stringify([readings, started(form.dataset.of)]);
    if (said.get(form) === shape)
        return;
    said.set(form, shape);
    list.replaceChildren(...readings.map(reading => {
        const item = document.createElement("li"), text = document.createElement("span"), back = document.createElement("button");
        const judged = judgedReading(form, reading.kelvin, reading.at);
        text.textContent = clock(reading.at) + " · " + judged.text;
        text.className = "is-" + judged.state;
        back.type = "button";
        back.textContent = words.takeBack;
        back.addEventListener("click", () => set(reading.key, ""));
        item.append(text, back);
        return item;
    }));
}

// Clocks.
let isSound = localStorage.getItem("run-sound") === "yes", audio = null, rung = new Set();
function ring() {
    if (!isSound)
        return;
    audio ??= new AudioContext();
    for (let i = 0; i < 3; i++) {
        const tone = audio.createOscillator(), volume = audio.createGain();
        tone.frequency.value = 880;
        volume.gain.value = 0.2;
        tone.connect(volume).connect(audio.destination);
        tone.start(audio.currentTime + 0.4 * i);
        tone.stop(audio.currentTime + 0.4 * i + 0.2);
    }
}

function tick() {
    const moment = now(), running = [];
    let dueCount = 0;
    for (const timer of sheet.querySelectorAll(".timer")) {
        const step = timer.closest(".step"), id = step.dataset.step, start = started(id), isDone = value(id + ":tick") === "yes";
        const output = timer.querySelector("output"), clear = timer.querySelector(".clear"), says = timer.querySelector(".says");
        timer.classList.toggle("runs", start !== null);
        clear.hidden = start === null;
        if (start === null) {
            put(output, "");
            put(says, "");
            timer.classList.remove("warned", "over");
            continue;
        }
        const seconds = Number(timer.dataset.seconds) || null, warn = Number(timer.dataset.warn) || null, passed = moment - start;
        const isOver = seconds !== null && passed >= 1000 * seconds, isWarned = !isOver && warn !== null && passed >= 1000 * warn;
        timer.classList.toggle("over", isOver && !isDone);
        timer.classList.toggle("warned", isWarned && !isDone);
        const shown = seconds === null ? length(passed) : isOver ? say(words.over, clock(start + 1000 * seconds)) : length(1000 * seconds - passed);
        put(output, shown);
        put(says, isDone ? "" : isOver ? timer.dataset.end : isWarned ? timer.dataset.warning : seconds === null ? say(words.runs, length(passed), clock(start)) : say(words.since, clock(start), clock(start + 1000 * seconds)));
        if (isDone)
            continue;
        const state = isOver ? "due" : isWarned ? "warned" : "";
        dueCount += isOver ? 1 : 0;
        running.push({ id, state, shown, text: step.querySelector(".tick span").textContent, order: isOver ? -1 : seconds === null ? Infinity : 1000 * seconds - passed });
        if (state && !rung.has(id + state + start)) {
            rung.add(id + state + start);
            ring();
        }
    }
    for (const due of sheet.querySelectorAll(".due[data-of]")) {
        const start = started(due.dataset.of), step = due.closest(".step"), isDone = value(step.dataset.step + ":tick") === "yes";
        if (start === null) {
            put(due, words.dueLater);
            continue;
        }
        const [early, at, late] = [due.dataset.early, due.dataset.seconds, due.dataset.late].map(text => start + 1000 * Number(text));
        put(due, clock(early) === clock(late) ? say(words.dueAt, clock(at)) : say(words.dueBetween, clock(at), clock(early), clock(late)));
        if (isDone)
            continue;
        const isDue = moment >= early;
        dueCount += isDue ? 1 : 0;
        running.push({ id: step.dataset.step, state: isDue ? "due" : "", shown: isDue ? due.textContent : say(words.left, length(early - moment)), text: step.querySelector(".tick span").textContent, order: early - moment });
        if (isDue && !rung.has(step.dataset.step + "due" + start)) {
            rung.add(step.dataset.step + "due" + start);
            ring();
        }
    }
    running.sort((a, b) => a.order - b.order);
    showClocks(running.slice(0, 3));
    document.title = (dueCount > 0 ? "(" + say(words.dueCount, dueCount) + ") " : "") + title;
}
const title = document.title;

function showClocks(running) {
    const host = document.getElementById("clocks");
    while (host.children.length > running.length)
        host.lastChild.remove();
    running.forEach((one, i) => {
        let line = host.children[i];
        if (!line) {
            line = document.createElement("a");
            line.append(document.createElement("span"), document.createElement("b"));
            line.addEventListener("click", event => {
                event.preventDefault();
                sheet.querySelector(`[data-step="${line.dataset.of}"]`).scrollIntoView({ block: "start" });
            });
            host.append(line);
        }
        line.href = location.pathname + "#" + one.id;
        line.dataset.of = one.id;
        line.className = one.state;
        put(line.firstChild, one.text);
        put(line.lastChild, one.shown);
    });
}

// What the hand does.
sheet.addEventListener("change", event => {
    const step = event.target.closest(".step");
    if (event.target.matches(".tick input"))
        set(step.dataset.step + ":tick", event.target.checked ? "yes" : "");
    else if (event.target.matches("textarea"))
        set(step.dataset.step + ":note", event.target.value);
});
sheet.addEventListener("click", event => {
    const step = event.target.closest(".step");
    if (event.target.matches(".timer .start"))
        set(step.dataset.step + ":timer", new Date(now()).toISOString());
    else if (event.target.matches(".timer .clear"))
        set(step.dataset.step + ":timer", "");
});
for (const form of sheet.querySelectorAll(".thermometer")) {
    form.addEventListener("submit", event => {
        event.preventDefault();
        const input = form.querySelector("input"), judged = form.querySelector(".judged"), text = input.value.trim().replace(",", ".");
        const shown = text === "" ? NaN : Number(text), kelvin = fahrenheit ? (shown - 32) / 1.8 + 273.15 : shown + 273.15;
        if (!(kelvin > 223 && kelvin < 623)) {
            judged.textContent = say(words.notNumber, input.value, fahrenheit ? "95" : number(34.5, 1));
            judged.className = "judged is-warm";
            input.focus();
            return;
        }
        const at = now(), told = judgedReading(form, kelvin, at);
        judged.textContent = told.text;
        judged.className = "judged is-" + told.state;
        if (told.state === "danger" || told.state === "warm") {
            const danger = document.getElementById("danger");
            danger.open = true;
            if (told.state === "danger") {
                danger.scrollIntoView({ block: "start" });
                ring();
            }
        }
        const random = crypto.getRandomValues(new Uint8Array(8));
        set("reading:" + [...random].map(byte => byte.toString(16).padStart(2, "0")).join(""), JSON.stringify({ part: form.dataset.part, kelvin: Math.round(100 * kelvin) / 100, at: new Date(at).toISOString() }));
        input.value = "";
    });
}
const sound = document.getElementById("sound");
function showSound() {
    sound.setAttribute("aria-pressed", String(isSound));
    put(sound, isSound ? words.soundOn : words.soundOff);
}
sound.addEventListener("click", () => {
    isSound = !isSound;
    localStorage.setItem("run-sound", isSound ? "yes" : "no");
    showSound();
    ring();
});

take(first.entries);
try {
    const kept = JSON.parse(localStorage.getItem(place) ?? "{}");
    for (const entry of kept.pending ?? []) {
        take([entry]);
        if (entries.get(entry.key).at === entry.at)
            pending.add(entry.key);
    }
} catch {
    // What this browser kept cannot be read; the store has the rest.
}
showSound();
show();
send();
setInterval(tick, 500);
setInterval(() => { if (!document.hidden || pending.size > 0) send(); }, 4000);
addEventListener("online", send);
document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
document.body.dataset.live = "true";
