import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import type { Preparation } from "./measureOut.ts";

interface Inputs {
	readonly preparation: Preparation;
	/** Left of the lot, as the product is measured out; null where there is no lot or the store counts it otherwise. */
	readonly left: number | null;
	/** The lot that would be used after it; "" where there is none. */
	readonly nextLot: string;
	/** Days it is taken to be old; null where its age is known or does not count. */
	readonly assumedAgeDays: number | null;
}

/** What to know of a lot before it is measured out: that its age is only assumed, that there is too little of it; empty where there is nothing. */
export const lotRemark = calculation<Inputs, string>({
	key: "lot_remark",
	label: say`Remark on the lot`,
	unit: "",
	formula: say`Said where the age of a liquid is not known, and where less is left of the lot than one preparation takes.`,
	source: commonPractice,
	inputs: {
		preparation: { label: say`One preparation`, unit: "" },
		left: { label: say`Left of the lot`, unit: say`mL, g or tablets` },
		nextLot: { label: say`Next lot`, unit: "" },
		assumedAgeDays: { label: say`A liquid of unknown age counts as`, unit: say`days old` },
	},
	example: {
		inputs: {
			preparation: {
				litres: 5.5,
				quantity: 820,
				measure: "mL",
				waterLitres: 4.68,
				strengthMadePct: 0.5,
			},
			left: 300,
			nextLot: "B-2",
			assumedAgeDays: null,
		},
		result: say`Too little for one preparation: ${say`${300} mL`} left, ${say`${820} mL`} needed. Use lot ${"B-2"}, by its own line, and order.`,
		within: 0,
	},
	compute: ({ preparation: { quantity, measure }, left, nextLot, assumedAgeDays }) =>
		[
			assumedAgeDays === null
				? ""
				: say`Its age is not known: it counts as ${assumedAgeDays} days old. Look for the day it was made on the bottle.`,
			left === null || left >= quantity
				? ""
				: tooLittle(
						amountWords(Math.floor(left), measure),
						amountWords(quantity, measure),
						nextLot,
					),
		]
			.filter(Boolean)
			.join(" "),
});

function tooLittle(left: string, needed: string, nextLot: string): string {
	return nextLot === ""
		? say`Too little for one preparation: ${left} left, ${needed} needed. Order now, and make up no more than it is enough for.`
		: say`Too little for one preparation: ${left} left, ${needed} needed. Use lot ${nextLot}, by its own line, and order.`;
}

function amountWords(quantity: number, measure: Preparation["measure"]): string {
	if (measure === "mL") return say`${quantity} mL`;
	if (measure === "g") return say`${quantity} g`;
	return quantity === 1 ? say`1 tablet` : say`${quantity} tablets`;
}
