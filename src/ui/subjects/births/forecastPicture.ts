import { dot, plot, rect, ruleX, ruleY, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { dayNumber, isoDate, weekday } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { apart } from "../../format/apart.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownDate } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { DayToCome } from "./daysToCome.ts";

/** Births of a past day; days not recorded have none. */
export interface PastDay {
	readonly date: string;
	readonly births: number;
}

const HALF_DAY = 0.5;
const LEFT_PX = 34;
const WIDE_PX = 560;
/** A day of the plan is drawn this many times as wide as a day of the past: there is more to see in it. */
const BROADER = 3;
const bandWords = { wide: say`9 of 10 days`, half: say`half of days`, expected: say`average` };
/** Room that a line of text takes, as a share of the picture's height. */
const LINE_SHARE = 0.07;

const at = (date: string) => dayNumber(date) ?? 0;

/** A day's name takes half of it; the rest keeps it from the next. */
const ROOM_A_LETTER_PX = 14;

/** The register day by day, then the days of the plan with the ranges of one day in two and of nine in ten. */
export function forecastPicture(
	past: readonly PastDay[],
	days: readonly DayToCome[],
	width: number,
): SVGElement {
	const first = at(days[0]?.date ?? "");
	const last = at(days.at(-1)?.date ?? "");
	const start = Math.min(first - 1, ...past.map((day) => at(day.date)));
	const place = (day: number) => (day < first ? 1 : BROADER) * (day - first + HALF_DAY);
	const top = Math.max(...past.map((day) => day.births), ...days.map((day) => day.high90)) + 1.5;
	const shown = days.map((day) => ({
		...day,
		from: place(at(day.date) - HALF_DAY),
		to: place(at(day.date) + HALF_DAY),
	}));
	const band = (y1: string, y2: string, className: string) =>
		rect(shown, { x1: "from", x2: "to", y1, y2, className });
	const ticks = mondays(start, last, first, width);
	const [from, to] = [place(start - 1), place(last + HALF_DAY)];
	const rightPx = LETTER_PX * Math.max(...Object.values(bandWords).map(({ length }) => length));
	const pastPx = LEFT_PX + (-from / (to - from)) * (width - LEFT_PX - rightPx);
	return quietParts(
		plot({
			width,
			height: 300,
			marginLeft: LEFT_PX,
			marginRight: rightPx,
			marginBottom: 40,
			marginTop: 42,
			x: {
				type: "linear",
				domain: [from, to],
				ticks: ticks.map(place),
				tickFormat: (_: number, i: number) => shownDate(isoDate(ticks[i] ?? 0)),
				label: null,
			},
			y: { domain: [0, top], label: say`births a day`, ticks: 6, tickFormat: shownPlain },
			marks: [
				ruleY([0]),
				band("low90", "high90", "band-90"),
				band("low50", "high50", "band-50"),
				ruleX([0], { className: "now-line" }),
				...sides(top, pastPx),
				dot(past, {
					x: (day: PastDay) => place(at(day.date)),
					y: "births",
					r: width < WIDE_PX ? 2 : 3,
					className: "past-dot",
				}),
				...expectedMarks(shown, top),
				...bandLabels(shown.at(-1), top),
			],
		}) as SVGElement,
	);
}

/** Which side of the line is the past, where it has the room, and which the plan. */
function sides(top: number, pastPx: number) {
	const side = (words: string, textAnchor: "start" | "end", dx: number) =>
		text([words], {
			x: () => 0,
			y: () => top,
			text: (word: string) => word,
			textAnchor,
			dx,
			dy: -12,
			className: "now-label",
		});
	const register = say`← register`;
	const plan = side(say`plan →`, "start", 5);
	return register.length * LETTER_PX > pastPx ? [plan] : [side(register, "end", -5), plan];
}

interface ShownDay extends DayToCome {
	readonly from: number;
	readonly to: number;
}

/** The mean of each day as a bar across it; the person's own figures wear the corner that they have in the grid, named over the highest. */
function expectedMarks(days: readonly ShownDay[], top: number) {
	const own = days.filter((day) => day.source === "own");
	const most = Math.max(...own.map(({ high90 }) => high90));
	const highest = own.filter(({ high90 }) => high90 === most).slice(0, 1);
	return [
		rect(days, {
			x1: "from",
			x2: "to",
			y1: (day: ShownDay) => day.expected - 0.06,
			y2: (day: ShownDay) => day.expected + 0.06,
			className: "expected-bar",
		}),
		text(own, {
			x: "from",
			// At the foot it would hide the day's name.
			y: ({ expected }: ShownDay) => Math.max(expected, top * LINE_SHARE),
			text: () => "◤",
			dx: 6,
			dy: 7,
			className: "own-corner",
		}),
		text(highest, {
			x: "to",
			y: "high90",
			text: () => say`yours`,
			textAnchor: "end",
			dy: -8,
			className: "own-label",
		}),
	];
}

/** What the bands and the bar are, written beside the last day, each clear of the next. */
function bandLabels(last: ShownDay | undefined, top: number) {
	if (!last) return [];
	const gap = top * LINE_SHARE;
	const heights = [last.high90 - gap / 2, last.high50 - gap / 2, last.expected];
	return [
		text([bandWords.wide, bandWords.half, bandWords.expected], {
			x: () => last.to,
			y: apart(heights, gap, gap / 2),
			dx: 6,
			textAnchor: "start",
			className: "band-label",
		}),
	];
}

/** Mondays, as many as there is room to read. */
function mondays(start: number, last: number, first: number, width: number): number[] {
	const found: number[] = [];
	for (let day = start; day <= last; day++) if (weekday(isoDate(day)) === 1) found.push(day);
	const letters = Math.max(...found.map((day) => shownDate(isoDate(day)).length));
	const room = Math.max(2, Math.floor(width / (letters * ROOM_A_LETTER_PX)));
	const step = Math.ceil(found.length / room);
	const anchor = found.findIndex((day) => day >= first);
	return found.filter((_, i) => (i - Math.max(0, anchor)) % step === 0);
}
