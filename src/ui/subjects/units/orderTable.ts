import { say } from "../../../core/say.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { DASH } from "../../format/shownFigure.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { type PaperColumn, paperTable } from "../../print/paperTable.ts";
import type { DistrictLine } from "./districtLines.ts";

const columns: readonly PaperColumn[] = [
	{ label: say`Item` },
	{ label: say`Order`, unit: say`packs`, numeric: true },
	{ label: say`That is`, numeric: true },
	{ label: say`Needed`, numeric: true },
	{ label: say`In the district's store`, numeric: true },
	{ label: say`Packs, unit by unit`, numeric: true },
	{ label: say`Cost`, numeric: true },
	{ label: say`Order by` },
	{ label: say`Units short` },
];

/** The district's order as a table. @param shares what each unit needs of a line; left out, only how many are short */
export function orderTable(
	name: string,
	lines: readonly DistrictLine[],
	shares?: (line: DistrictLine) => readonly string[],
): HTMLElement {
	return paperTable(name, columns, [{ rows: lines.map((line) => cellsOf(line, shares)) }]);
}

function cellsOf(
	line: DistrictLine,
	shares: ((line: DistrictLine) => readonly string[]) | undefined,
): Child[] {
	const number = (value: number | undefined) => (value === undefined ? DASH : shownPlain(value));
	const amount = (value: number | undefined) =>
		value === undefined ? DASH : amountOf(value, line.measure);
	const short = counted(line.short, "unit");
	return [
		el(
			"span",
			{},
			line.isUrgent && el("strong", {}, say`URGENT`, " "),
			line.item,
			line.remark !== "" && el("span", { class: "paper-remark" }, line.remark),
		),
		el("strong", {}, number(line.packs)),
		amount(line.quantity),
		amount(line.need),
		line.inStore === undefined ? say`not listed` : amount(line.inStore),
		number(line.unitPacks),
		line.cost === undefined ? "" : shownNumber(line.cost, 2),
		shownDay(line.orderBy),
		line.short === 0 ? say`none` : shares ? folded(short, () => shares(line)) : short,
	];
}

/** Thousands of lines are made only when someone asks for them. */
function folded(words: string, lines: () => readonly string[]): HTMLElement {
	const list = el("ul", { tabindex: 0, "aria-label": say`What each unit needs` });
	const details = el("details", { class: "shares-of" }, el("summary", {}, words), list);
	const unfold = () => fill(list, ...lines().map((line) => el("li", {}, line)));
	details.addEventListener("toggle", unfold, { once: true });
	return details;
}
