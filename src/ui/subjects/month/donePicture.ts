import { dot, plot, rect, ruleY } from "@observablehq/plot";
import type { ComparedDay } from "../../../core/plan/record/comparedDays.ts";
import { say } from "../../../core/say.ts";
import { dayNumber, isoDate, weekday } from "../../../core/values/date.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { shownDate } from "../../format/shownDay.ts";

const HALF_DAY = 0.5;
/** Room that the name of a day takes. */
const NAME_PX = 84;

const at = (date: string) => dayNumber(date) ?? 0;

/** Births of each day as dots, over the band of what was set aside and the bar of what was expected. */
export function donePicture(days: readonly ComparedDay[], width: number): SVGElement {
	const numbers = days.map(({ date }) => at(date));
	const [first, last] = [Math.min(...numbers), Math.max(...numbers)];
	const top = Math.max(...days.flatMap(({ done, setAside }) => [done, setAside ?? 0])) + 1;
	const mondays = numbers.filter((day) => weekday(isoDate(day)) === 1);
	const every = Math.ceil((mondays.length * NAME_PX) / width) || 1;
	const ticks = mondays.filter((_, i) => i % every === 0);
	const across = {
		x1: ({ date }: ComparedDay) => at(date) - HALF_DAY,
		x2: ({ date }: ComparedDay) => at(date) + HALF_DAY,
	};
	const picture = plot({
		width,
		height: 220,
		marginLeft: 34,
		marginBottom: 36,
		marginTop: 26,
		x: {
			type: "linear",
			domain: [first - HALF_DAY, last + HALF_DAY],
			ticks,
			tickFormat: (day: number) => shownDate(isoDate(day)),
			label: null,
		},
		y: { domain: [0, top], label: say`births a day`, ticks: 5, tickFormat: "d" },
		marks: [
			ruleY([0]),
			rect(days, {
				...across,
				y1: 0,
				y2: (day: ComparedDay) => day.setAside ?? 0,
				className: "band-90",
			}),
			rect(
				days.filter(({ expected }) => expected !== null),
				{
					...across,
					y1: ({ expected }: ComparedDay) => (expected ?? 0) - 0.06,
					y2: ({ expected }: ComparedDay) => (expected ?? 0) + 0.06,
					className: "expected-bar",
				},
			),
			dot(days, { x: ({ date }: ComparedDay) => at(date), y: "done", r: 3, className: "past-dot" }),
		],
	}) as SVGElement;
	return quietParts(picture);
}
