import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { Printed } from "../../state/unitSetting.ts";
import { label, labelHead, labelLine } from "./label.ts";

/** An empty box, as wide as a digit, to write in. */
const ROOM = "\u2003";

/** The label of one rinse bucket: its place in the order, large, and room for boiling, cooling and discarding. */
export function rinseLabel(
	unit: string,
	bucket: number | undefined,
	buckets: Printed<number>,
	belowC: Printed<number>,
	keepsHours: Printed<number>,
): HTMLElement {
	const numbers = Array.from({ length: buckets.value ?? 0 }, (_, i) => String(i + 1));
	const order =
		numbers.length === 0 ? TO_WRITE : numbers.reduce((first, next) => say`${first} then ${next}`);
	const why = [buckets.why, belowC.why, keepsHours.why].filter(Boolean).join(" ");
	return label(
		"rinse",
		unit,
		labelHead(
			bucket === undefined ? ROOM : String(bucket),
			say.safety`Rinse bucket ${bucket ?? TO_WRITE} of ${buckets.value ?? TO_WRITE}`,
		),
		el("p", {}, say.safety`Boiled, cooled water. Order: ${order}.`),
		labelLine(say.safety`Boiled at`, undefined),
		labelLine(say.safety`Cool since`, undefined),
		labelLine(
			say.safety`DISCARD AT (boiled + ${keepsHours.value === undefined ? TO_WRITE : shownPlain(keepsHours.value)} h)`,
			undefined,
		),
		labelLine(say.safety`By whom`, undefined),
		why !== "" && el("p", { class: "label-small" }, why),
		el(
			"p",
			{ class: "label-caution" },
			say.safety`Not before it is at or below ${belowC.value ?? TO_WRITE} °C.`,
			" ",
			say.safety`Fresh for each load. Covered. Hot water scalds: away from children. No chlorine, no vinegar, no soap in it.`,
		),
	);
}
