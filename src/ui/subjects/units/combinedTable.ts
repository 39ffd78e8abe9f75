import { say } from "../../../core/say.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { type PaperColumn, paperTable } from "../../print/paperTable.ts";
import type { CombinedLine } from "./combinedLines.ts";

const columns: readonly PaperColumn[] = [
	{ label: say`Item` },
	{ label: say`Order`, unit: say`packs`, numeric: true },
	{ label: say`That is`, numeric: true },
	{ label: say`Needed`, numeric: true },
	{ label: say`Cost`, numeric: true },
	{ label: say`Order by` },
	{ label: say`Units`, numeric: true },
	{ label: say`Short` },
];

/** How each unit's share is shown: folded on a screen, left out or written out on paper. */
export type Shares = "folded" | "left out" | "written out";

/** The combined list as a table. */
export function combinedTable(lines: readonly CombinedLine[], shares: Shares): HTMLElement {
	return paperTable(say`All units together`, columns, [
		{ rows: lines.map((line) => rowOf(line, shares)) },
	]);
}

function rowOf(line: CombinedLine, shares: Shares): Child[] {
	const amount = (quantity: number | undefined) =>
		quantity === undefined ? "–" : amountOf(quantity, line.measure);
	return [
		el(
			"span",
			{},
			line.isUrgent && el("strong", {}, say`URGENT`, " "),
			line.item,
			line.remark !== "" && el("span", { class: "paper-remark" }, line.remark),
		),
		el("strong", {}, line.packs === undefined ? "–" : shownPlain(line.packs)),
		amount(line.quantity),
		amount(line.need),
		line.cost === undefined ? "" : shownNumber(line.cost, 2),
		shownDay(line.orderBy),
		shownPlain(line.units),
		sharesOf(line, shares),
	];
}

function sharesOf({ shares }: CombinedLine, shown: Shares): Child {
	const short = counted(shares.length, "unit");
	if (shares.length === 0) return say`none`;
	if (shown === "left out") return short;
	if (shown === "written out") return el("span", { class: "paper-small" }, shares.join(semicolon));
	return folded(short, shares);
}

/** Thousands of lines are made only when someone asks for them. */
function folded(words: string, lines: readonly string[]): HTMLElement {
	const list = el("ul", { tabindex: 0, "aria-label": say`What each unit needs` });
	const details = el("details", { class: "shares-of" }, el("summary", {}, words), list);
	const unfold = () => fill(list, ...lines.map((line) => el("li", {}, line)));
	details.addEventListener("toggle", unfold, { once: true });
	return details;
}
