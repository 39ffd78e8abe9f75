import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { label, labelHead, labelLine } from "./labelParts.ts";

/** The label of one rinse bucket: its place in the order, large, and room for boiling, cooling and discarding. */
export function rinseLabel(
	unit: string,
	bucket: number,
	buckets: number,
	belowC: number | undefined,
): HTMLElement {
	const numbers = Array.from({ length: buckets }, (_, i) => String(i + 1));
	const order = numbers.reduce((first, next) => say`${first} then ${next}`);
	const cool = belowC === undefined ? "" : say`Not before it is at or below ${belowC} °C.`;
	return label(
		"rinse",
		unit,
		labelHead(String(bucket), say`Rinse bucket ${bucket} of ${buckets}`),
		el("p", {}, say`Boiled, cooled water. Order: ${order}.`),
		labelLine(say`Boiled at`, undefined),
		labelLine(say`Cool since`, undefined),
		labelLine(say`DISCARD AT`, undefined),
		labelLine(say`By whom`, undefined),
		el(
			"p",
			{ class: "label-caution" },
			cool,
			" ",
			say`Fresh for each load. Covered. Hot water scalds: away from children. No chlorine, no vinegar, no soap in it.`,
		),
	);
}
