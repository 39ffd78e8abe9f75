import { allPassed, type CheckedTest, kitChecked } from "../../../core/edit/bench/kitChecked.ts";
import type { LineTexts } from "../../../core/edit/bench/lineWritten.ts";
import { piecesByKind } from "../../../core/plan/kits/piecesOfKinds.ts";
import { kitsOn } from "../../../core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { wordIn } from "../../state/numberIn.ts";
import { readinessCautions } from "../kits/readinessCautions.ts";
import { waitsForTest } from "../today/waitsForRound.ts";
import type { Bench } from "./bench.ts";
import { benchDialog, reasonLine, showWrong } from "./benchDialog.ts";
import { benchFields, momentText } from "./benchFields.ts";
import { passedWords } from "./passedWords.ts";
import { testBoxes } from "./testBoxes.ts";
import { whenAllSeen } from "./whenAllSeen.ts";
import { writtenAt } from "./writtenAt.ts";

const { columns } = checksSheet;

/**
 * A kit put together and tested, on one screen. No test is answered beforehand; a failure is
 * written down with the tap that says it, and "all passed" only counts after every test was
 * in view.
 */
export function openCheck({ around, at, kit, wrote }: Bench): void {
	const { store } = around;
	const read = readWorkbook(store.state.workbook);
	const rows = kitsOn(read, at.date).filter((row) => wordIn(row.state) !== "out_of_service");
	const listed = piecesByKind(read.tables.kinds);
	const ofKit = (name: string) => rows.find((row) => wordIn(row.kit) === name);
	const pieces = () => listed.get(wordIn(ofKit(fields.kit.control.value)?.kind)) ?? 0;
	const waiting = rows.find(waitsForTest);
	const fields = {
		kit: benchFields.choice(
			"kit",
			columns.kit.label,
			rows.map((row) => [
				wordIn(row.kit),
				say`${wordIn(row.kit)} (${shownWord(wordIn(row.state))})`,
			]),
			kit ?? wordIn((waiting ?? rows[0])?.kit),
		),
		purpose: benchFields.choice(
			"purpose",
			columns.purpose.label,
			["after_round", "before_use"].map((value) => [value, shownWord(value)]),
			"after_round",
		),
		checked_at: benchFields.moment("checked-at", columns.checked_at.label, at),
		checked_by: benchFields.who("checked-by", columns.checked_by.label, store.state),
		note: benchFields.text("note", columns.note.label),
	};
	const reason = reasonLine();
	const said = el("p", { class: "bench-said", role: "status" });
	const boxes = testBoxes();
	const passed = el("button", { type: "button", class: "main bench-act" }, say`All tests passed`);
	const rest = el("button", { type: "submit", class: "bench-act" }, say`Write down what is ticked`);
	let row: number | undefined;
	const { form, close } = benchDialog(
		say`Kit tested`,
		fields.kit.control,
		fields.kit.element,
		fields.purpose.element,
		boxes.element,
		said,
		fields.checked_by.element,
		fields.checked_at.element,
		fields.note.element,
		reason,
		passed,
		rest,
		cautionList(readinessCautions),
	);
	const seen = whenAllSeen(boxes.rows, (all) => {
		passed.setAttribute("aria-disabled", String(!all));
		passed.textContent = all
			? say`All tests passed`
			: say`All tests passed (first look at every one of them)`;
	});
	const texts = (): LineTexts => ({
		checked_at: momentText(fields.checked_at),
		kit: fields.kit.control.value,
		purpose: fields.purpose.control.value,
		checked_by: fields.checked_by.control.value,
		note: fields.note.control.value,
		...boxes.texts(),
	});
	const writeFound = (): boolean => {
		const written = kitChecked(store.state.workbook, texts(), row);
		showWrong(written.ok ? [] : written.wrong, fields, reason);
		if (!written.ok) return false;
		row = written.row;
		wrote(written.workbook, foundWords(fields.kit.control.value, boxes.failed()));
		return true;
	};
	const begin = () => {
		row = undefined;
		boxes.begin(pieces());
		seen.begin();
		said.textContent = "";
	};
	fields.kit.control.addEventListener("change", begin);
	form.addEventListener("change", ({ target }) => {
		if (target === fields.kit.control) return;
		if (row === undefined && boxes.failed().length === 0) return;
		if (writeFound()) said.textContent = foundWords(fields.kit.control.value, boxes.failed());
	});
	passed.addEventListener("click", () => {
		if (!seen.all()) {
			reason.textContent = say`Look at every test first: go down to the last of them.`;
			return;
		}
		if (boxes.failed().length > 0) {
			reason.textContent = say`A test failed: this kit is set apart, and not all passed.`;
			return;
		}
		const written = allPassed(store.state.workbook, texts(), pieces());
		showWrong(written.ok ? [] : written.wrong, fields, reason);
		if (!written.ok) return;
		const name = fields.kit.control.value;
		const { date } = writtenAt(fields.checked_at);
		close();
		wrote(written.workbook, passedWords(written.workbook, name, date));
	});
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		if (!boxes.isTouched()) {
			reason.textContent = say`Nothing is ticked yet.`;
			return;
		}
		if (writeFound()) close();
	});
	begin();
}

function foundWords(kit: string, failed: readonly (CheckedTest | "pieces")[]): string {
	if (failed.length === 0) return say`What was found of kit ${kit} is written down.`;
	return say`Kit ${kit} is set apart, and that is written down: ${failed.map(testWords).join(", ")}.`;
}

function testWords(test: CheckedTest | "pieces"): string {
	if (test === "pieces") return say`pieces missing`;
	return test === "damage" ? columns.damage.label : say`${columns[test].label}: no`;
}
