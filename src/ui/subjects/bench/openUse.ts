import { kitUsed } from "../../../core/edit/bench/kitUsed.ts";
import { kitsOn } from "../../../core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { usesSheet } from "../../../core/sheets/uses.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { Bench } from "./bench.ts";
import { benchDialog, mainAct, reasonLine, showWrong } from "./benchDialog.ts";
import { benchFields, momentText, NO_NAMES } from "./benchFields.ts";
import { usedWords } from "./usedWords.ts";
import { writtenAt } from "./writtenAt.ts";

const { columns } = usesSheet;

/** A kit was used on a baby, or opened: which, when, by whom. */
export function openUse({ around, at, kit, wrote }: Bench): void {
	const { store } = around;
	const kits = [...kitsOn(readWorkbook(store.state.workbook), at.date)]
		.filter((row) => wordIn(row.state) !== "out_of_service")
		.sort((a, b) => (numberIn(a.use_next) ?? Infinity) - (numberIn(b.use_next) ?? Infinity));
	const first = kit ?? wordIn(kits[0]?.kit);
	const fields = {
		kit: benchFields.choice(
			"kit",
			columns.kit.label,
			kits.map((row) => [
				wordIn(row.kit),
				say`${wordIn(row.kit)} (${shownWord(wordIn(row.state))})`,
			]),
			first,
		),
		what: benchFields.choice(
			"what",
			columns.what.label,
			[
				["used", say`used on a baby`],
				["opened", say`opened, not used`],
			],
			"used",
		),
		at: benchFields.moment("at", columns.at.label, at),
		by: benchFields.who("by", columns.by.label, store.state),
		note: benchFields.text("note", columns.note.label),
	};
	const reason = reasonLine();
	const main = mainAct(say`Write it down`);
	const { form, close } = benchDialog(
		kit === undefined ? say`A kit was used` : say`Kit ${kit} was used`,
		main,
		fields.kit.element,
		fields.what.element,
		fields.at.element,
		fields.by.element,
		main,
		fields.note.element,
		el("p", { class: "hint" }, NO_NAMES),
		reason,
	);
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const written = kitUsed(store.state.workbook, {
			at: momentText(fields.at),
			kit: fields.kit.control.value,
			what: fields.what.control.value,
			by: fields.by.control.value,
			note: fields.note.control.value,
		});
		showWrong(written.ok ? [] : written.wrong, fields, reason);
		if (!written.ok) return;
		const which = fields.kit.control.value;
		const what = fields.what.control.value === "used" ? "used" : "opened";
		const moment = writtenAt(fields.at);
		close();
		wrote(written.workbook, usedWords(which, what, moment, at.date));
	});
}
