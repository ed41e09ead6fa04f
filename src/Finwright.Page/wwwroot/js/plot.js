// A plot: takes a sheet as text (see PlotFile), draws it, reads values off under the pointer or with the arrow keys. Draws anew only
// when the sheet, the size or the colours change.
import uPlot from "uplot";

const tokens = { water: "--water", ink: "--ink", quiet: "--quiet", tight: "--tight", fails: "--fails", holds: "--holds", rule: "--rule", paper: "--paper" };
const dashes = { solid: [], dashed: [8, 5], dotted: [2, 4], dashDot: [9, 4, 2, 4], marks: [] };
const type = "12px Inter, system-ui, sans-serif";

// Tokens may be written as light-dark(…): the browser resolves them on an element.
function colours(host) {
    const probe = document.createElement("span");
    probe.hidden = true;
    host.append(probe);
    const found = {};
    for (const [name, token] of Object.entries(tokens)) {
        probe.style.color = `var(${token})`;
        found[name] = getComputedStyle(probe).color;
    }
    probe.remove();
    return found;
}

function faint(colour, share) {
    return `color-mix(in srgb, ${colour} ${share}%, transparent)`;
}

const pen = document.createElement("canvas").getContext("2d");
function width(text) {
    pen.font = type;
    return pen.measureText(text).width;
}

export function open(host, readout) {
    let sheet = null, plot = null, ink = colours(host), asked = false, closed = false;

    const number = (value, decimals) => {
        const text = (Number(value.toFixed(decimals)) + 0).toFixed(decimals).replace("-", "\u2212");
        return sheet.hasComma ? text.replace(".", ",") : text;
    };
    const unit = axis => axis.unit === "" || axis.unit === "°" ? axis.unit : " " + axis.unit;

    function told(index) {
        const words = [`${sheet.x.title} ${number(sheet.grid[index], sheet.x.decimals)}${unit(sheet.x)}`];
        for (const line of sheet.lines) {
            const value = line.values[index];
            if (value !== null)
                words.push(`${line.name} ${number(value, sheet.y.decimals)}${unit(sheet.y)}`);
        }
        return words.join(" · ");
    }

    // Names stand beside the ends of their lines, as near as they find room.
    function names(u) {
        const c = u.ctx, ratio = devicePixelRatio, box = u.bbox, across = sheet.isUpright;
        c.save();
        c.font = `${12 * ratio}px Inter, system-ui, sans-serif`;
        c.textBaseline = "middle";
        const labels = [];
        sheet.lines.forEach((line, i) => {
            let last = line.values.length - 1;
            while (last >= 0 && line.values[last] === null)
                last--;
            if (last < 0)
                return;
            const y = u.valToPos(line.values[last], "y", true), x = u.valToPos(sheet.grid[last], "x", true);
            if (line.dash === "marks" && !across) {
                // Beside its mark, on the side where there is room.
                const right = x + c.measureText(line.name).width + 10 * ratio < box.left + box.width;
                c.fillStyle = ink[line.ink];
                c.textAlign = right ? "left" : "right";
                c.fillText(line.name, x + (right ? 8 : -8) * ratio, Math.min(y + 12 * ratio, box.top + box.height - 8 * ratio));
                return;
            }
            labels.push({ text: line.name, ink: line.ink, along: y, at: x });
        });
        if (across) {
            // Below the tip, in rows when they would meet.
            labels.sort((a, b) => a.along - b.along);
            const rows = [];
            for (const label of labels) {
                const wide = c.measureText(label.text).width;
                const middle = Math.min(Math.max(label.along, box.left + wide / 2), box.left + box.width - wide / 2);
                let row = 0;
                while (row < rows.length && rows[row] > middle - wide / 2 - 8 * ratio)
                    row++;
                rows[row] = middle + wide / 2;
                c.fillStyle = ink[label.ink];
                c.textAlign = "center";
                c.fillText(label.text, middle, box.top + box.height + (12 + 15 * row) * ratio);
            }
        } else {
            const gap = 15 * ratio;
            labels.sort((a, b) => a.along - b.along);
            let edge = box.top - gap / 2;
            for (const label of labels) {
                label.row = Math.max(label.along, edge + gap);
                edge = label.row;
            }
            edge = box.top + box.height + gap / 2;
            for (const label of labels.toReversed()) {
                label.row = Math.min(label.row, edge - gap);
                edge = label.row;
            }
            for (const label of labels) {
                const left = box.left + box.width + 8 * ratio;
                c.strokeStyle = faint(ink[label.ink], 50);
                c.lineWidth = ratio * 0.75;
                c.beginPath();
                c.moveTo(Math.min(label.at + 4 * ratio, left - 2 * ratio), label.along);
                c.lineTo(left - 2 * ratio, label.row);
                c.stroke();
                c.fillStyle = ink[label.ink];
                c.textAlign = "left";
                c.fillText(label.text, left, label.row);
            }
        }
        c.restore();
    }

    function limits(u) {
        const c = u.ctx, ratio = devicePixelRatio, box = u.bbox;
        c.save();
        c.beginPath();
        c.rect(box.left, box.top, box.width, box.height);
        c.clip();
        c.font = `${12 * ratio}px Inter, system-ui, sans-serif`;
        for (const limit of sheet.limits) {
            const at = u.valToPos(limit.value, "y", true), to = limit.to === null ? at : u.valToPos(limit.to, "y", true);
            c.strokeStyle = c.fillStyle = ink[limit.ink];
            c.lineWidth = ratio;
            c.setLineDash([2 * ratio, 3 * ratio]);
            for (const edge of new Set([at, to])) {
                c.beginPath();
                if (sheet.isUpright) {
                    c.moveTo(edge, box.top);
                    c.lineTo(edge, box.top + box.height);
                } else {
                    c.moveTo(box.left, edge);
                    c.lineTo(box.left + box.width, edge);
                }
                c.stroke();
            }
            if (at !== to) {
                c.fillStyle = faint(ink[limit.ink], 12);
                if (sheet.isUpright)
                    c.fillRect(Math.min(at, to), box.top, Math.abs(to - at), box.height);
                else
                    c.fillRect(box.left, Math.min(at, to), box.width, Math.abs(to - at));
                c.fillStyle = ink[limit.ink];
            }
            c.textBaseline = "bottom";
            if (sheet.isUpright) {
                const wide = c.measureText(limit.name).width, right = Math.max(at, to) + 4 * ratio;
                c.textAlign = "left";
                c.fillText(limit.name, right + wide < box.left + box.width ? right : Math.min(at, to) - wide - 4 * ratio, box.top + 16 * ratio);
            } else {
                c.textAlign = "right";
                const above = Math.min(at, to) - 2 * ratio;
                c.fillText(limit.name, box.left + box.width - 4 * ratio, above - 14 * ratio < box.top ? Math.max(at, to) + 15 * ratio : above);
            }
        }
        c.restore();
    }

    function drawn() {
        const narrow = host.clientWidth < 420;
        const axis = (scale, of, side, label) => ({
            scale, side, font: type, labelFont: type, stroke: ink.quiet, label,
            labelSize: 18, labelGap: 2, gap: 4,
            grid: { stroke: ink.rule, width: 0.5 }, ticks: { stroke: ink.quiet, width: 1, size: 4 }, border: { show: true, stroke: ink.quiet, width: 1 },
            space: side === 3 || side === 1 ? 34 : narrow ? 60 : 56,
            size: side === 3 || side === 1 ? (u, values) => 12 + Math.max(10, ...(values ?? []).map(width)) : 24,
            ...(of.isLogarithmic ? { splits: (u, index, low, high) => round(low, high), filter: (u, splits) => splits } : {}),
            values: (u, splits) => splits.map(value => value === null ? null : number(value, of.isLogarithmic ? Math.max(0, -Math.floor(Math.log10(value))) : fine(splits))),
        });
        // 1, 2, 5 and their tens.
        const round = (low, high) => {
            const found = [];
            for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10)
                found.push(...[1, 2, 5].map(digit => digit * ten).filter(value => value >= low && value <= high));
            return found;
        };
        const fine = splits => {
            const shown = splits.filter(value => value !== null);
            return shown.length < 2 ? 0 : Math.min(6, Math.max(0, -Math.floor(Math.log10(Math.abs(shown[1] - shown[0])) + 1e-9)));
        };
        const range = (of, always) => (u, low, high) => {
            let least = of.least ?? low, greatest = of.greatest ?? high;
            for (const limit of always)
                if (of.greatest === null && limit.value > greatest)
                    greatest = limit.value * 1.03;
            if (greatest === least)
                greatest = least + 1;
            // Air beyond the lines where no end was asked for.
            const air = of.isLogarithmic ? 0 : 0.03 * (greatest - least);
            return [of.least === null ? least - air : least, of.greatest === null ? greatest + air : greatest];
        };
        const title = of => of.unit === "" ? of.title : `${of.title}, ${of.unit}`;
        const up = sheet.isUpright;
        const widest = Math.max(0, ...sheet.lines.filter(line => line.dash !== "marks").map(line => width(line.name)));
        const right = up ? 14 : Math.min(widest + 14, host.clientWidth * 0.42);
        const rows = up ? Math.min(sheet.lines.length, 8) : 0;
        const options = {
            width: host.clientWidth, height: host.clientHeight,
            padding: [up ? 4 : 10, right, up ? 8 + 16 * rows : 0, 0],
            legend: { show: false },
            scales: {
                x: { time: false, ori: up ? 1 : 0, dir: (up ? -1 : 1) * (sheet.x.isReversed ? -1 : 1), range: range(sheet.x, []) },
                y: { ori: up ? 0 : 1, dir: sheet.y.isReversed ? -1 : 1, distr: sheet.y.isLogarithmic ? 3 : 1, range: range(sheet.y, sheet.limits) },
            },
            axes: up ? [axis("x", sheet.x, 3, title(sheet.x)), axis("y", sheet.y, 0, title(sheet.y))] : [axis("x", sheet.x, 2, title(sheet.x)), axis("y", sheet.y, 3, title(sheet.y))],
            series: [{}, ...sheet.lines.map(line => ({
                scale: "y", pxAlign: 0, label: line.name, stroke: ink[line.ink], width: line.dash === "marks" ? 0 : line.isGhost ? 1 : line.dash === "solid" ? 2 : 1.4,
                dash: line.isGhost ? [5, 4] : dashes[line.dash], spanGaps: true,
                ...(line.dash === "marks" ? { paths: () => null } : {}),
                points: { show: line.dash === "marks", size: 9, fill: ink.paper, stroke: ink[line.ink], width: 2 },
            }))],
            bands: sheet.bands.map(band => ({ series: [band.upper + 1, band.lower + 1], fill: faint(ink[band.ink], 14) })),
            cursor: { drag: { x: false, y: false }, x: !up, y: up, points: { size: 7 } },
            hooks: {
                draw: [limits, names],
                setCursor: [u => {
                    const index = u.cursor.idx;
                    readout.textContent = index === null || index === undefined || !asked ? "" : told(index);
                }],
            },
        };
        plot?.destroy();
        plot = new uPlot(options, [sheet.grid, ...sheet.lines.map(line => line.values)], host);
        host.dataset.drawn = String(Number(host.dataset.drawn ?? 0) + 1);
    }

    function draw() {
        if (!closed && sheet && host.clientWidth > 0 && host.clientHeight > 0)
            drawn();
    }

    function goTo(index) {
        asked = true;
        const at = plot.valToPos(sheet.grid[index], "x"), value = sheet.lines.map(line => line.values[index]).find(own => own !== null);
        const across = plot.valToPos(value, "y");
        plot.setCursor(sheet.isUpright ? { left: across, top: at } : { left: at, top: across });
    }

    function onKey(event) {
        if (!plot)
            return;
        const last = sheet.grid.length - 1, now = plot.cursor.idx;
        const steps = { ArrowLeft: -1, ArrowUp: sheet.isUpright ? -1 : 1, ArrowRight: 1, ArrowDown: sheet.isUpright ? 1 : -1, PageUp: -10, PageDown: 10 };
        let to;
        if (event.key === "Home")
            to = 0;
        else if (event.key === "End")
            to = last;
        else if (event.key in steps)
            to = now === null || now === undefined ? 0 : now + steps[event.key];
        else if (event.key === "Escape") {
            plot.setCursor({ left: -10, top: -10 });
            return;
        } else
            return;
        event.preventDefault();
        goTo(Math.min(Math.max(to, 0), last));
    }
    const onPointer = () => { asked = true; };
    host.addEventListener("keydown", onKey);
    host.addEventListener("pointermove", onPointer);
    host.addEventListener("pointerdown", onPointer);

    let size = "";
    const watch = new ResizeObserver(() => {
        const now = `${host.clientWidth}x${host.clientHeight}`;
        if (now !== size) {
            size = now;
            draw();
        }
    });
    watch.observe(host);
    const repaint = () => {
        ink = colours(host);
        draw();
    };
    const dark = matchMedia("(prefers-color-scheme: dark)");
    dark.addEventListener("change", repaint);
    const theme = new MutationObserver(repaint);
    theme.observe(document.documentElement, { attributeFilter: ["data-theme"] });

    return {
        show(file) {
            sheet = JSON.parse(file);
            readout.textContent = "";
            asked = false;
            draw();
        },
        close() {
            closed = true;
            watch.disconnect();
            theme.disconnect();
            dark.removeEventListener("change", repaint);
            host.removeEventListener("keydown", onKey);
            host.removeEventListener("pointermove", onPointer);
            host.removeEventListener("pointerdown", onPointer);
            plot?.destroy();
            plot = null;
        },
    };
}
