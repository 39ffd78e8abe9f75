import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { wardSolutionSheet } from "../../../core/sheets/wardSolution.ts";
import { wardUseSheet } from "../../../core/sheets/wardUse.ts";
import { el } from "../../dom/el.ts";
import { withinSentence } from "../../dom/withinSentence.ts";
import { quantityWords } from "../../format/litreWords.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { nameOfProductInUse } from "./mix.ts";

/** The ward's other solution in a line; undefined where none is listed. */
export function wardHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, wardUseSheet);
	const litres = rows.map((row) => numberIn(row.litres_per_day) ?? 0).reduce((a, b) => a + b, 0);
	if (rows.length === 0) return undefined;
	const quantities = rows.map((row) => numberIn(row.plan_quantity));
	const all = quantities.reduce(
		(sum, q) => (sum === undefined || q === undefined ? undefined : sum + q),
		0,
	);
	if (all === undefined)
		return say`${shownPlain(litres)} L a day of other solution on the ward over the plan`;
	const quantity = quantityWords(Math.ceil(all), wordIn(rows[0]?.product_measure));
	const product = nameOfProductInUse(state);
	return product === ""
		? say`${shownPlain(litres)} L a day of other solution on the ward: ${quantity} of product over the plan`
		: say`${shownPlain(litres)} L a day of other solution on the ward: ${quantity} of ${product} over the plan`;
}

/** That the ward's other solution is kept apart from the kits' figures. @param listsIt whether it stands over the list itself */
export function wardView(state: State, listsIt: boolean): HTMLElement {
	const none = rowsOf(state.plan, wardUseSheet).length === 0;
	return el(
		"section",
		{ class: "said" },
		el(
			"p",
			{},
			none && say`No other use of solution is listed.`,
			" ",
			say.safety`Solution for floors, surfaces and the like is kept apart from the kits' figures: it is in none of the litres of the plan, the kits or the mixing sheets, so that it cannot hide what the kits need. It counts in the water to fetch and in what is ordered. Each use has its own strength: never fill a soak from a floor bucket.`,
			" ",
			...(none && !listsIt
				? withinSentence(
						(link) => say`List it on ${link}.`,
						el("a", { href: hashOf(wardSolutionSheet.file) }, wardSolutionSheet.title),
					)
				: []),
		),
	);
}
