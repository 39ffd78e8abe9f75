import type { Customs, Question } from "../../core/read/block/blockTable.ts";
import { say } from "../../core/say.ts";
import { shownDayAndYear } from "../format/shownDay.ts";
import { titleOf } from "../shell/titleOf.ts";

type Answer = NonNullable<Customs["numbers"] | Customs["dates"]>;

/** What is asked of a text with two meanings, and what can be answered. */
export function questionWords({ about, place, label, text, readings }: Question): {
	readonly title: string;
	readonly text: readonly string[];
	readonly answers: readonly (readonly [Answer, string])[];
	readonly even: true;
} {
	const sheet = titleOf(place.file);
	const where =
		place.line === null
			? say`It stands in “${sheet}”, ${label}.`
			: say`It stands in “${sheet}”, line ${place.line}, ${label}.`;
	const settles = say`The answer holds for everything that is read with it.`;
	if (about === "dates")
		return {
			even: true,
			title: say`Which day is ${text}?`,
			text: [where, settles],
			answers: [
				["day-first", shownDayAndYear(readings[0].slice(0, 10))],
				["month-first", shownDayAndYear(readings[1].slice(0, 10))],
			],
		};
	const [point, comma] = readings.map(Number) as [number, number];
	const between = Math.ceil(Math.min(Math.abs(point), Math.abs(comma))) + 1;
	const less = Math.abs(point) < Math.abs(comma);
	return {
		even: true,
		title: say`Is ${text} more or less than ${between}?`,
		text: [where, settles],
		answers: [
			["point", less ? say`less: ${point}` : say`more: ${point}`],
			["comma", less ? say`more: ${comma}` : say`less: ${comma}`],
		],
	};
}
