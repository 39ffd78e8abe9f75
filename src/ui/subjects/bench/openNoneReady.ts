import { kitUsed } from "../../../core/edit/bench/kitUsed.ts";
import { say } from "../../../core/say.ts";
import { usesSheet } from "../../../core/sheets/uses.ts";
import { el } from "../../dom/el.ts";
import { shownTime } from "../../format/moment.ts";
import { whenNoneReady } from "../today/whenNoneReady.ts";
import type { Bench } from "./bench.ts";
import { benchDialog, mainAct, reasonLine, showWrong } from "./benchDialog.ts";
import { benchFields, momentText, NO_NAMES } from "./benchFields.ts";
import { writtenAt } from "./writtenAt.ts";

const { columns } = usesSheet;

/** A kit was needed and none was ready: what to do comes first, then the line for the record. */
export function openNoneReady({ around, at, wrote }: Bench): void {
	const { store } = around;
	const fields = {
		at: benchFields.moment("at", columns.at.label, at),
		by: benchFields.who("by", columns.by.label, store.state),
		note: benchFields.text("note", columns.note.label),
	};
	const reason = reasonLine();
	const main = mainAct(say`Write it down`);
	const { form, close } = benchDialog(
		say`No kit was ready`,
		main,
		whenNoneReady(store.state),
		main,
		...Object.values(fields).map(({ element }) => element),
		el("p", { class: "hint" }, NO_NAMES),
		reason,
	);
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const written = kitUsed(store.state.workbook, {
			at: momentText(fields.at),
			what: "none_ready",
			by: fields.by.control.value,
			note: fields.note.control.value,
		});
		showWrong(written.ok ? [] : written.wrong, fields, reason);
		if (!written.ok) return;
		const when = shownTime(writtenAt(fields.at));
		close();
		wrote(written.workbook, say`A kit was needed and none was ready: ${when}.`);
	});
}
