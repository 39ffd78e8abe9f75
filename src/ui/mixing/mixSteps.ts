import { shownNumber } from "../shown/shownNumber.ts";
import { litreWords, quantityWords } from "./litreWords.ts";
import type { Mix } from "./mix.ts";

const UNTIL: Readonly<Record<string, string>> = {
	mL: "and stir gently",
	g: "and stir until it has dissolved",
	tablet: "and wait until they have dissolved",
};

/** A preparation step by step, water first: what to do, in the order in which it is done. */
export function mixSteps(mix: Mix, discardHours: number | undefined): string[] {
	const { product, lot, quantity, measure, waterLitres, litres, strengthPct } = mix;
	const from = lot === "" ? "going by its label" : `lot ${lot}`;
	const until =
		measure === "tablet" && quantity === 1 ? "and wait until it has dissolved" : UNTIL[measure];
	const discard =
		discardHours === undefined
			? "discard time"
			: `discard time (${discardHours} hours later at most)`;
	return [
		`Measure ${litreWords(waterLitres)} of cold water into a clean plastic container.`,
		`Put ${quantityWords(quantity, measure)} of ${product}, ${from}, into the water ${until ?? ""}`.trim() +
			".",
		`This makes ${litreWords(litres)} at ${shownNumber(strengthPct, 3)}\u00a0% available chlorine.`,
		`Label it at once: chlorine, date, time mixed, ${discard}.`,
	];
}
