import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { PrintOut } from "../../page.ts";
import { headLine } from "../../print/paperHead.ts";
import { paperTable } from "../../print/paperTable.ts";
import { signatures } from "../../print/signatures.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { storeCautions } from "../store/storeCautions.ts";
import type { DistrictState } from "./districtLists.ts";
import { isFolded, needsOf, type OrderLine, orderHeadline, orderLines } from "./orderLines.ts";
import { orderTable } from "./orderTable.ts";

/** @param notes what must be known of the sums: other weeks, units that are lacking */
export function orderPaper(
	state: DistrictState,
	notes: readonly string[],
	withShares: boolean,
): PrintOut {
	return {
		name: say`Print the order`,
		pages: () => [orderPage(state, notes), ...(withShares ? [sharesPage(state)] : [])],
	};
}

function orderPage({ district, sums }: DistrictState, notes: readonly string[]): HTMLElement {
	const lines = orderLines(sums.table);
	const shown = lines.filter((line) => !isFolded(line));
	const left = lines.filter(isFolded).map(({ item }) => item);
	return el(
		"section",
		{ class: "lying" },
		headLine(say`Combined order of ${counted(district.counted, "unit")}`, ""),
		el("h1", {}, orderHeadline(district.counted, lines)),
		...notes.map((words) => el("p", {}, words)),
		orderTable(say`All units together`, shown),
		el("p", { class: "paper-total" }, ...costWords(shown)),
		left.length > 0 &&
			el("p", { class: "paper-small" }, say`Nothing to order of: ${left.join(", ")}.`),
		cautionList(storeCautions),
		signatures(say`Prepared by, date`, say`Checked by, date`, say`Approved by, date`),
	);
}

function costWords(lines: readonly OrderLine[]) {
	const cost = lines.reduce((sum, line) => sum + (line.cost ?? 0), 0);
	const unpriced = lines.filter((line) => (line.packs ?? 0) > 0 && line.cost === undefined);
	return [
		el("strong", {}, say`Cost in all: ${shownNumber(cost, 2)}`),
		unpriced.length > 0 &&
			say`, without the price of ${unpriced.map((line) => line.item).join(", ")}`,
		". ",
		say`Prices as the units give them.`,
	];
}

/** What each unit gets, a row a unit, on as many pages as that takes; it lies as the order before it does, or it would be cut. */
function sharesPage({ district, nameOf }: DistrictState): HTMLElement {
	const title = say`What each unit needs`;
	return el(
		"section",
		{ class: "lying" },
		headLine(say`Combined order of ${counted(district.counted, "unit")}`, ""),
		el("h1", {}, title),
		paperTable(
			title,
			[
				{ label: say`Unit` },
				{ label: say`Needed, and its own packs` },
				{ label: say`Given, by, date`, blank: true },
			],
			[
				{
					rows: district.units.map((unit) => [
						unit.row.unit,
						needWords(unit, needsOf(unit, nameOf)),
						"",
					]),
				},
			],
		),
	);
}

function needWords(
	{ row }: DistrictState["district"]["units"][number],
	needs: readonly string[],
): string {
	if (row.state === "not_read") return say`not read: ${row.in_words}`;
	return needs.length === 0 ? say`nothing` : needs.join("; ");
}
