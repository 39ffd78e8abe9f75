import type { Conflict, Said, Side } from "../../../core/merge/conflict.ts";
import { say } from "../../../core/say.ts";
import { sheetOf } from "../../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { el } from "../../dom/el.ts";
import { shownChoice } from "../../format/shownChoice.ts";
import { titleOf } from "../../shell/titleOf.ts";
import { rowWords } from "./rowWords.ts";
import { saveWords } from "./saveWords.ts";

/** One conflict, both texts side by side, to choose from. Neither is chosen beforehand. */
export function conflictChoice(
	conflict: Conflict,
	chosen: Side | undefined,
	choose: (side: Side) => void,
): HTMLElement {
	const { key, file, column, row, ours, theirs } = conflict;
	const option = (side: Side, words: string, said: Said) => {
		const field = el("input", {
			type: "radio",
			name: key,
			checked: chosen === side,
			onchange: () => choose(side),
		});
		const text = shownText(conflict, said);
		const known = said.save ? saveWords(said.save) : "";
		return el(
			"label",
			{},
			field,
			el("span", { class: "whose" }, words),
			el("span", { class: "said" }, text),
			known !== "" && el("span", { class: "known" }, known),
		);
	};
	return el(
		"fieldset",
		{ class: "conflict" },
		el("legend", {}, legendOf(file, row, column)),
		option("ours", say`This workbook`, ours),
		option("theirs", say`The other copy`, theirs),
	);
}

function legendOf(file: string, row: string, column: string): string {
	const sheet = titleOf(file);
	if (file === unitSheet.file || column === "") return say`${sheet}: ${rowWords(file, row)}`;
	return say`${sheet}: ${row}; ${sheetOf(file)?.columns[column]?.label ?? column}`;
}

function shownText({ file, column }: Conflict, { text }: Said): string {
	if (text === undefined) return say`deleted`;
	if (text.trim() === "") return say`blank`;
	return shownChoice(text, sheetOf(file)?.columns[column]?.value.options);
}
