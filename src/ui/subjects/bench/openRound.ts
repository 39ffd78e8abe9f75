import { roundDone } from "../../../core/edit/bench/roundDone.ts";
import { decimalSign } from "../../../core/language.ts";
import { kitsOn } from "../../../core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { roundsDoneSheet } from "../../../core/sheets/roundsDone.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { listed } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { waitsForRound } from "../today/waitsForRound.ts";
import { afterRound } from "./afterRound.ts";
import type { Bench } from "./bench.ts";
import { benchDialog, mainAct, reasonLine, showWrong } from "./benchDialog.ts";
import { benchFields, momentText, NO_NAMES } from "./benchFields.ts";
import { knownOfRound } from "./knownOfRound.ts";
import { roundsLack } from "./roundsLack.ts";

const { columns } = roundsDoneSheet;

/** A round as it was done: what is known stands there; when the last load went in and came out is asked. */
export function openRound({ around, at, wrote }: Bench): void {
	const { store } = around;
	const known = knownOfRound(store.state, at);
	const lacking = roundsLack(store.state);
	const unit = (words: string) => el("span", { class: "unit" }, ` ${words}`);
	const fields = {
		start: benchFields.moment("start", columns.start.label, known.start),
		ended: benchFields.time("ended", columns.ended.label, known.ended),
		soak_in: benchFields.time("soak-in", columns.soak_in.label),
		soak_out: benchFields.time("soak-out", columns.soak_out.label),
		done_by: benchFields.who("done-by", columns.done_by.label, store.state),
		released_by: benchFields.who("released-by", columns.released_by.label, store.state),
		lot: benchFields.choice("lot", columns.lot.label, known.lots, known.lots[0]?.[0] ?? ""),
		litres: benchFields.text(
			"litres",
			columns.litres.label,
			{ inputmode: "decimal", value: known.litres.replace(".", decimalSign) },
			unit(columns.litres.unit),
		),
		strength_reading_pct: benchFields.text(
			"strength",
			columns.strength_reading_pct.label,
			{ inputmode: "decimal" },
			unit(columns.strength_reading_pct.unit),
		),
		note: benchFields.text("note", columns.note.label),
	};
	const kits = kitBoxes(store.state, at.date, known.usedSince);
	const descaled = el("input", { type: "checkbox", id: "bench-descaled" });
	const reason = reasonLine();
	const asked = (Object.keys(fields) as (keyof typeof fields)[]).filter(
		(key) => !lacking.includes(key),
	);
	const { form, close } = benchDialog(
		say`Round done`,
		(lacking.includes("soak_in") ? fields.ended : fields.soak_in).control,
		el("fieldset", { class: "bench-boxes" }, el("legend", {}, columns.kits.label), ...kits.labels),
		reason,
		...asked.map((key) => fields[key].element),
		el(
			"label",
			{ class: "bench-box" },
			descaled,
			known.descalingDue ? say`Descaled in vinegar (due in this round)` : say`Descaled in vinegar`,
		),
		el("p", { class: "hint" }, NO_NAMES),
		mainAct(say`Write this round down`),
	);
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const [date = "", start = ""] = momentText(fields.start).split(" ");
		const text = (key: keyof typeof fields) =>
			asked.includes(key) ? fields[key].control.value : "";
		const written = roundDone(store.state.workbook, {
			date,
			start,
			ended: text("ended"),
			kits: kits.chosen().join(" "),
			product: text("lot") === "" ? "" : known.product,
			lot: text("lot"),
			litres: text("litres"),
			strength_reading_pct: text("strength_reading_pct"),
			soak_in: text("soak_in"),
			soak_out: text("soak_out"),
			descaled: descaled.checked ? "yes" : "no",
			done_by: text("done_by"),
			released_by: text("released_by"),
			note: text("note"),
		});
		showWrong(written.ok ? [] : written.wrong, fields, reason);
		if (!written.ok) {
			if (reason.textContent !== "") reason.scrollIntoView({ block: "center" });
			return;
		}
		close();
		const round = say`Round of ${shownDay(date)}, ${start}: ${listed(kits.chosen())}.`;
		wrote(written.workbook, `${round} ${afterRound(written.workbook, date, start)}`);
	});
}

/** Every kit that can be in a round; those that waited for it are ticked. */
function kitBoxes(state: State, day: string, usedSince: ReadonlySet<string>) {
	const rows = kitsOn(readWorkbook(state.workbook), day).filter(
		(row) => wordIn(row.state) !== "out_of_service",
	);
	const boxes = rows.map((row) =>
		el("input", {
			type: "checkbox",
			value: wordIn(row.kit),
			checked: waitsForRound(row) && !usedSince.has(wordIn(row.kit)),
		}),
	);
	return {
		labels: boxes.map((box, at) =>
			el(
				"label",
				{ class: "bench-box" },
				box,
				say`${box.value} (${shownWord(wordIn(rows[at]?.state))})`,
			),
		),
		chosen: () => boxes.filter(({ checked }) => checked).map(({ value }) => value),
	};
}
