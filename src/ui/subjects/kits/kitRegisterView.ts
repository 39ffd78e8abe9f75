import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { el } from "../../dom/el.ts";
import { semicolon } from "../../format/semicolon.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { stateMark } from "./stateMark.ts";
import { untilOrReason } from "./untilOrReason.ts";

/** Every kit in a line: mark and word for its state, until when, and in which order to use them. */
export function kitRegisterView(state: State): HTMLElement | undefined {
	const rows = rowsOf(state.plan, kitRegisterSheet);
	if (rows.length === 0) return undefined;
	return el(
		"section",
		{ class: "kit-lines", "aria-label": say`Kits in short` },
		el("ul", {}, ...inOrder(rows).map(line)),
		el(
			"p",
			{},
			el("a", { href: hashOf("kit-history") }, say`History of a kit, and check sheets to print`),
		),
	);
}

/** The ready ones first, in the order of use; then as in the register. */
function inOrder(
	rows: readonly ComputedRow<typeof kitRegisterSheet>[],
): ComputedRow<typeof kitRegisterSheet>[] {
	const place = (row: ComputedRow<typeof kitRegisterSheet>) =>
		numberIn(row.use_next) ?? Number.POSITIVE_INFINITY;
	return [...rows].sort((a, b) => (place(a) === place(b) ? 0 : place(a) - place(b)));
}

function line(row: ComputedRow<typeof kitRegisterSheet>): HTMLElement {
	const state = wordIn(row.state);
	return el(
		"li",
		{},
		el("strong", {}, wordIn(row.kit)),
		" ",
		stateMark(state),
		el("span", {}, detail(row)),
	);
}

function detail(row: ComputedRow<typeof kitRegisterSheet>): string {
	const order = numberIn(row.use_next);
	const words = [
		untilOrReason(row),
		order === 1 ? say`use this one next` : "",
		wordIn(row.counts) === "yes" ? "" : say`not counted`,
	];
	return words.filter(Boolean).join(semicolon);
}
