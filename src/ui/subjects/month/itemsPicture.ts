import { dot, link, plot, ruleX, text } from "@observablehq/plot";
import type { ItemAgainstPlan } from "../../../core/plan/record/itemsAgainstPlan.ts";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { twoDigits } from "../../format/shownNumber.ts";

const ROW_PX = 44;
const TOP_PX = 44;
const BOTTOM_PX = 38;
/** Wider than this nothing can be read any more: in % of what is planned. */
const MOST_PCT = 400;

const pct = (value: number, { planned }: ItemAgainstPlan) =>
	Math.min(MOST_PCT, (100 * value) / planned);

/** Each item as a dot at what was used in % of what the plan takes, in the band of one issue more or less. */
export function itemsPicture(
	items: readonly ItemAgainstPlan[],
	named: (item: ItemAgainstPlan) => string,
	width: number,
): SVGElement {
	const most = Math.max(150, ...items.map((item) => pct(item.high, item)));
	return quietParts(
		plot({
			width,
			height: items.length * ROW_PX + TOP_PX + BOTTOM_PX,
			marginLeft: 16,
			marginRight: 24,
			marginTop: TOP_PX,
			marginBottom: BOTTOM_PX,
			x: {
				domain: [0, most],
				ticks: 5,
				tickFormat: twoDigits,
				label: say`used, in % of what the plan takes`,
			},
			y: { type: "band", domain: items.map(({ item }) => item), axis: null },
			marks: [
				link(items, {
					y: "item",
					x1: (item: ItemAgainstPlan) => pct(item.low, item),
					x2: (item: ItemAgainstPlan) => pct(item.high, item),
					className: "between-band",
				}),
				ruleX([100], { className: "target-line" }),
				text([100], {
					x: (value: number) => value,
					frameAnchor: "top",
					dy: -26,
					text: () => say`as planned`,
					className: "target-label",
				}),
				dot(items, {
					y: "item",
					x: (item: ItemAgainstPlan) => pct(item.used, item),
					r: 5,
					className: "past-dot",
				}),
				text(items, {
					y: "item",
					frameAnchor: "left",
					dy: -16,
					textAnchor: "start",
					text: named,
					className: "row-label",
				}),
			],
		}) as SVGElement,
	);
}
