import { say } from "../../../core/say.ts";
import type { ItemNames } from "../../../core/units/itemNames.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import type { District } from "./district.ts";
import { type DistrictLine, isFolded, packsSaved, sharesOf } from "./districtLines.ts";
import { orderTable } from "./orderTable.ts";

/** The order of all units on the screen; items of which nothing is ordered fold away. */
export function orderPart(
	lines: readonly DistrictLine[],
	{ units }: District,
	nameOf: ItemNames,
): HTMLElement {
	const saved = packsSaved(lines);
	const none = lines.filter(isFolded);
	const shares = (line: DistrictLine) => sharesOf(line, units, nameOf);
	const room = (name: string, shown: readonly DistrictLine[]) =>
		el(
			"div",
			{ class: "combined", tabindex: 0, role: "region", "aria-label": name },
			orderTable(name, shown, shares),
		);
	const folded = el("div", {});
	const details = el(
		"details",
		{ class: "none-ordered" },
		el("summary", {}, say`${counted(none.length, "item")} of which nothing is ordered`),
		folded,
	);
	const unfold = () => fill(folded, room(say`Nothing to order`, none));
	details.addEventListener("toggle", unfold, { once: true });
	return el(
		"section",
		{ class: "order-part" },
		el("h2", {}, say`The order of all units together`),
		saved !== undefined && el("p", { class: "saying" }, saved),
		room(
			say`All units together`,
			lines.filter((line) => !isFolded(line)),
		),
		none.length > 0 && details,
	);
}
