import { checkedTests } from "../../../core/edit/bench/kitChecked.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { kindsSheet } from "../../../core/sheets/kinds.ts";
import { el } from "../../dom/el.ts";
import { paperForm } from "../../print/paperForm.ts";
import { planDays } from "../../print/planDays.ts";
import type { State } from "../../state/store.ts";

const COLUMNS = 6;
/** Damage has no line of its own: what was seen is written out in words. */
const TESTS = checkedTests.filter((test) => test !== "damage");

/** A sheet to hang by the bench: one page a kit, a column a check. */
export function checkSheet(state: State, kit: string, kind: string): HTMLElement {
	const { rows } = readTable(kindsSheet, state.workbook.tables[kindsSheet.file]);
	const pieces = rows.filter(({ value }) => value.kind === kind);
	const total = pieces.reduce((sum, { value }) => sum + value.count, 0);
	return paperForm(
		state,
		"check-paper",
		{
			title: say`Readiness checks of kit ${kit}`,
			when: `${kind} · ${planDays(state)}`,
			cautions: [
				say.safety`Count every loose piece before putting together. One “no”, or one piece short: the kit is not ready; set it apart and write why. When in doubt do not use. Test again before each birth.`,
			],
		},
		el(
			"table",
			{ class: "check-table" },
			el("thead", {}, line(say`Date and time`, "")),
			el(
				"tbody",
				{},
				...pieces.map(({ value }) => line(`${value.piece} (${value.count})`, "___")),
				line(say`Pieces counted, of ${total}`, "", "total"),
				...TESTS.map((test) => testLine(test)),
				line(say`Ready?`, say`yes / no`, "total"),
				line(say`Why not; what was done`, "", "tall"),
				line(say`Checked by`, ""),
			),
		),
	);
}

function testLine(test: (typeof TESTS)[number]): HTMLElement {
	const { label, help } = checksSheet.columns[test];
	return line(label, say`yes / no`, "", help);
}

function line(name: string, cell: string, sort = "", help = ""): HTMLElement {
	return el(
		"tr",
		{ class: sort },
		el("th", { scope: "row" }, name, help !== "" && el("span", { class: "unit" }, ` ${help}`)),
		...Array.from({ length: COLUMNS }, () => el("td", {}, cell)),
	);
}
