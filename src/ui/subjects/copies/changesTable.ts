import type { Change } from "../../../core/merge/conflict.ts";
import { say } from "../../../core/say.ts";
import { sheetOf } from "../../../core/sheets/sheetOf.ts";
import { el } from "../../dom/el.ts";
import { titleOf } from "../../shell/titleOf.ts";
import { countOf, type SheetChanges } from "./previewOf.ts";
import { rowWords } from "./rowWords.ts";

/** So many changes of a sheet are named one by one. */
const MOST_NAMED = 50;
const kinds = ["added", "changed", "deleted"] as const;

/** What came from where, sheet by sheet. */
export function changesTable(sheets: readonly SheetChanges[]): HTMLElement {
	const heads = [say`added`, say`changed`, say`deleted`];
	const cell = (count: number) => el("td", {}, count === 0 ? "–" : String(count));
	return el(
		"div",
		{ class: "from-where", tabindex: 0, role: "region", "aria-label": say`What comes from where` },
		el(
			"table",
			{ class: "paper-table" },
			el(
				"thead",
				{},
				el(
					"tr",
					{},
					el("th", { scope: "col", rowspan: 2 }, say`Sheet`),
					el("th", { scope: "colgroup", colspan: 3 }, say`From this workbook`),
					el("th", { scope: "colgroup", colspan: 3 }, say`From the other copy`),
					el("th", { scope: "col", rowspan: 2 }, say`To choose`),
				),
				el("tr", {}, ...[...heads, ...heads].map((head) => el("th", { scope: "col" }, head))),
			),
			el(
				"tbody",
				{},
				...sheets.map(({ file, changes, conflicts }) =>
					el(
						"tr",
						{},
						el("th", { scope: "row" }, titleOf(file)),
						...(["ours", "theirs"] as const).flatMap((side) =>
							kinds.map((kind) => cell(countOf(changes, side, kind))),
						),
						cell(conflicts.length),
					),
				),
			),
		),
	);
}

/** What the other copy brings into a sheet, line by line; to be unfolded. */
export function changesList({ file, changes }: SheetChanges): HTMLElement | undefined {
	const theirs = changes.filter(({ from }) => from === "theirs");
	if (theirs.length === 0) return undefined;
	const left = theirs.length - MOST_NAMED;
	return el(
		"details",
		{ class: "brings" },
		el("summary", {}, say`What the other copy brings into “${titleOf(file)}”`),
		el(
			"ul",
			{},
			...theirs.slice(0, MOST_NAMED).map((change) => el("li", {}, changeWords(change))),
			left > 0 && el("li", {}, say`and ${left} more`),
		),
	);
}

function changeWords({ file, kind, row, column = "", before = "", after = "" }: Change): string {
	const name = rowWords(file, row);
	if (kind === "added") return say`added: ${name}`;
	if (kind === "deleted") return say`deleted: ${name}`;
	const label = sheetOf(file)?.columns[column]?.label ?? column;
	const [from, to] = [before, after].map((text) => (text.trim() === "" ? say`blank` : text));
	return say`changed: ${name}; ${label}: ${from ?? ""} → ${to ?? ""}`;
}
