import { barX, plot, ruleX, text } from "@observablehq/plot";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownNumber } from "../../format/shownNumber.ts";

const PRODUCT_PX = 54;

/** What a product costs over a quarter. */
export interface ProductCost {
	readonly product: string;
	readonly cost: number;
	readonly inUse: boolean;
}

/** One bar a product, its cost written on it; the product in use is marked. @param all that are compared, by which the scale goes */
export function costPicture(
	costs: readonly ProductCost[],
	all: readonly ProductCost[],
	currency: string,
	width: number,
): SVGElement {
	const words = ({ cost }: ProductCost) => `${shownNumber(cost, 2)} ${currency}`.trim();
	const most = Math.max(...all.map(({ cost }) => cost));
	const longest = Math.max(...all.map((cost) => words(cost).length)) * LETTER_PX;
	return quietParts(
		plot({
			width,
			height: costs.length * PRODUCT_PX + 12,
			marginLeft: 8,
			marginRight: 16,
			marginTop: 6,
			marginBottom: 6,
			x: { domain: [0, most / (1 - Math.min(0.6, longest / width))], axis: null },
			y: { domain: [0, 1], axis: null },
			fy: { domain: costs.map(({ product }) => product), axis: null, padding: 0 },
			marks: [
				barX(costs, {
					fy: "product",
					x: "cost",
					className: "cost-bar",
					insetTop: 24,
					insetBottom: 14,
				}),
				ruleX([0], { className: "strength-ground" }),
				text(costs, {
					fy: "product",
					frameAnchor: "top-left",
					dy: 6,
					textAnchor: "start",
					text: ({ product, inUse }: ProductCost) =>
						inUse ? say`${product} (in use here)` : product,
					className: "kind-label",
				}),
				text(costs, {
					fy: "product",
					x: "cost",
					y: 0.45,
					dx: 6,
					textAnchor: "start",
					text: words,
					className: "cover-label",
				}),
			],
		}) as SVGElement,
	);
}
