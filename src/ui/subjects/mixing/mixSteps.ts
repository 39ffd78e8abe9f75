import { say } from "../../../core/say.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { State } from "../../state/store.ts";
import { type Printed, printedSetting } from "../../state/unitSetting.ts";
import type { Mix } from "./mix.ts";

/** How this unit mixes, as its settings say it. */
export interface MixingRules {
	readonly life: Printed<number>;
	readonly settle: Printed<number>;
	readonly water: Printed<"tap" | "boiled">;
	readonly pourAway: Printed<string>;
}

export function mixingRules(state: State): MixingRules {
	return {
		life: printedSetting(state, "solution_life_hours"),
		settle: printedSetting(state, "settle_minutes"),
		water: printedSetting(state, "solution_water"),
		pourAway: printedSetting(state, "pour_away"),
	};
}

/** A preparation step by step, water first: what to do, in the order in which it is done. */
export function mixSteps(mix: Mix, { life, settle, water, pourAway }: MixingRules): string[] {
	const { product, lot, quantity, measure, waterLitres, litres, strengthPct } = mix;
	const from = lot === "" ? say`going by its label` : say`lot ${lot}`;
	return [
		[measureWords(litreWords(waterLitres), water.value), water.why].filter(Boolean).join(" "),
		putWords(measure, quantity, say`${quantityWords(quantity, measure)} of ${product}, ${from}`),
		say.safety`This makes ${litreWords(litres)} at ${shownAs(preparationColumns.strength_made_pct, strengthPct)}\u00a0% available chlorine.`,
		[labelWords(life.value), life.why].filter(Boolean).join(" "),
		...(measure === "g" ? [settleWords(settle)] : []),
		pourAwayWords(pourAway),
	];
}

/** Boiled water is measured when it is cold: hot water weakens the solution and drives chlorine out. */
function measureWords(litres: string, water: MixingRules["water"]["value"]): string {
	return water === "boiled"
		? say.safety`Measure ${litres} of boiled, cooled water into a clean plastic container.`
		: say.safety`Measure ${litres} of cold water into a clean plastic container.`;
}

function labelWords(hours: number | undefined): string {
	return say.safety`Label it at once: chlorine, date, time mixed, ${
		hours === undefined ? say`discard time` : say`discard time (${hours} hours later at most)`
	}.`;
}

/** Where it goes when it is done with. */
export function pourAwayWords({ value, why }: Printed<string>): string {
	return say`Afterwards: ${value ?? why}`;
}

/** Calcium hypochlorite brings lime with it. */
export function settleWords({ value, why }: Printed<number>): string {
	return [
		say.safety`Powder of calcium hypochlorite leaves a deposit: let it settle for ${value ?? TO_WRITE} minutes, pour off and use only the clear liquid. Begin that much earlier.`,
		why,
	]
		.filter(Boolean)
		.join(" ");
}

/** @param product how much of what, and of which lot */
function putWords(measure: string, quantity: number, product: string): string {
	if (measure === "mL") return say.safety`Put ${product}, into the water and stir gently.`;
	if (measure === "g")
		return say.safety`Put ${product}, into the water and stir until it has dissolved.`;
	if (measure !== "tablet") return say.safety`Put ${product}, into the water.`;
	return quantity === 1
		? say.safety`Put ${product}, into the water and wait until it has dissolved.`
		: say.safety`Put ${product}, into the water and wait until they have dissolved.`;
}
