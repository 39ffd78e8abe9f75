import { say } from "../../../core/say.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { Printed } from "../../state/unitSetting.ts";
import type { Mix } from "./mix.ts";

/** A preparation step by step, water first: what to do, in the order in which it is done. */
export function mixSteps(mix: Mix, life: Printed<number>, settle: Printed<number>): string[] {
	const { product, lot, quantity, measure, waterLitres, litres, strengthPct } = mix;
	const from = lot === "" ? say`going by its label` : say`lot ${lot}`;
	const discard =
		life.value === undefined
			? say`discard time`
			: say`discard time (${life.value} hours later at most)`;
	return [
		say`Measure ${litreWords(waterLitres)} of cold water into a clean plastic container.`,
		putWords(measure, quantity, say`${quantityWords(quantity, measure)} of ${product}, ${from}`),
		say`This makes ${litreWords(litres)} at ${shownAs(preparationColumns.strength_made_pct, strengthPct)}\u00a0% available chlorine.`,
		[say`Label it at once: chlorine, date, time mixed, ${discard}.`, life.why]
			.filter(Boolean)
			.join(" "),
		...(measure === "g" ? [settleWords(settle)] : []),
	];
}

/** Calcium hypochlorite brings lime with it. */
export function settleWords({ value, why }: Printed<number>): string {
	return [
		say`Powder of calcium hypochlorite leaves a deposit: let it settle for ${value ?? TO_WRITE} minutes, pour off and use only the clear liquid. Begin that much earlier.`,
		why,
	]
		.filter(Boolean)
		.join(" ");
}

/** @param product how much of what, and of which lot */
function putWords(measure: string, quantity: number, product: string): string {
	if (measure === "mL") return say`Put ${product}, into the water and stir gently.`;
	if (measure === "g") return say`Put ${product}, into the water and stir until it has dissolved.`;
	if (measure !== "tablet") return say`Put ${product}, into the water.`;
	return quantity === 1
		? say`Put ${product}, into the water and wait until it has dissolved.`
		: say`Put ${product}, into the water and wait until they have dissolved.`;
}
