import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { el } from "../../dom/el.ts";
import { onceIn } from "../../format/onceIn.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { usesPerYear } from "./usesPerYear.ts";

/** What would help, in short: one change a line, the one that spares most first, and how often each leaves a need without a kit. */
export function leversBrief(state: State): HTMLElement | undefined {
	const tables = tablesOf(state);
	if (tables.length === 0) return undefined;
	return el(
		"section",
		{ class: "levers-brief" },
		el("h2", {}, say`What would help`),
		...tables,
		el("p", {}, el("a", { href: hashOf(leversSheet.file) }, say`All about these changes`)),
	);
}

/** The same below the sheet itself, for a phone, on which a change takes all the width of its cells. */
export function leversOnPhone(state: State): HTMLElement | undefined {
	const tables = tablesOf(state);
	return tables.length === 0 ? undefined : el("div", { class: "on-phone" }, ...tables);
}

/** A table for each kind of kit. */
function tablesOf(state: State): HTMLElement[] {
	const rows = rowsOf(state.plan, leversSheet).filter(
		(row) => numberIn(row.unmet_per_1000_uses) !== undefined,
	);
	const kinds = [...new Set(rows.map((row) => wordIn(row.kind)))];
	return kinds.map((kind) =>
		table(
			kind,
			rows.filter((row) => wordIn(row.kind) === kind),
			usesPerYear(state, kind),
		),
	);
}

function table(
	kind: string,
	rows: readonly ComputedRow<typeof leversSheet>[],
	yearly: number | undefined,
): HTMLElement {
	const line = (row: ComputedRow<typeof leversSheet>, at: number) => {
		const unmet = numberIn(row.unmet_per_1000_uses) as number;
		return el(
			"tr",
			{ class: at === 0 ? "now" : undefined },
			el("th", { scope: "row" }, wordIn(row.change)),
			el("td", { class: "numeric" }, shownPlain(Number(unmet.toPrecision(2)))),
			el("td", {}, yearly === undefined ? "" : onceIn(unmet, yearly)),
		);
	};
	return el(
		"table",
		{ class: "brief" },
		kind !== "" && el("caption", {}, kind),
		el(
			"thead",
			{},
			el(
				"tr",
				{},
				el("th", { scope: "col" }, say`One change at a time`),
				el(
					"th",
					{ scope: "col", class: "numeric" },
					say`Of 1\u202f000 times, no kit ready when needed`,
				),
				el("th", { scope: "col" }, say`No kit is ready when needed`),
			),
		),
		el("tbody", {}, ...rows.map(line)),
	);
}
