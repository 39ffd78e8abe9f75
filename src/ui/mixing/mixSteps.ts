import { say } from "../../core/say.ts";
import { shownNumber } from "../shown/shownNumber.ts";
import { litreWords, quantityWords } from "./litreWords.ts";
import type { Mix } from "./mix.ts";

const UNTIL: Readonly<Record<string, string>> = {
	mL: say`and stir gently`,
	g: say`and stir until it has dissolved`,
	tablet: say`and wait until they have dissolved`,
};

/** A preparation step by step, water first: what to do, in the order in which it is done. */
export function mixSteps(mix: Mix, discardHours: number | undefined): string[] {
	const { product, lot, quantity, measure, waterLitres, litres, strengthPct } = mix;
	const from = lot === "" ? say`going by its label` : say`lot ${lot}`;
	const until =
		measure === "tablet" && quantity === 1 ? say`and wait until it has dissolved` : UNTIL[measure];
	const discard =
		discardHours === undefined
			? say`discard time`
			: say`discard time (${discardHours} hours later at most)`;
	return [
		say`Measure ${litreWords(waterLitres)} of cold water into a clean plastic container.`,
		`Put ${quantityWords(quantity, measure)} of ${product}, ${from}, into the water ${until ?? ""}`.trim() +
			".",
		say`This makes ${litreWords(litres)} at ${shownNumber(strengthPct, 3)}\u00a0% available chlorine.`,
		say`Label it at once: chlorine, date, time mixed, ${discard}.`,
	];
}
