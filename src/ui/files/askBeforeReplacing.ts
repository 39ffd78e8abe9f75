import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { Workbook } from "../../core/workbook.ts";
import { unreadCopy } from "../../io/history/unreadCopy.ts";
import { problemWords } from "../format/problemWords.ts";
import { ask } from "../shell/ask.ts";
import { titleOf } from "../shell/titleOf.ts";
import type { State } from "../state/store.ts";
import type { Opened } from "./readGiven.ts";

/**
 * Asks what is to become of what would be replaced, where that is in no file or where lines
 * would vanish from a sheet. @returns undefined where nothing is to be opened
 */
export async function askBeforeReplacing(
	{ workbook, unsaved, book }: Pick<State, "workbook" | "unsaved" | "book">,
	opened: Opened,
): Promise<"replace" | "together" | undefined> {
	const files = Object.keys(opened.workbook.tables);
	if (files.length === 0) return "replace";
	const isWhole = files.includes(unitSheet.file);
	const losing = files.filter((file) => losesLines(workbook, opened.workbook, file));
	const isAtStake = isWhole ? unsaved : losing.length > 0 && (unsaved || book.in.own === true);
	if (!isAtStake) return "replace";
	const [why] = unreadCopy(opened);
	const together = why ? [] : [["together", say`Bring both together`] as const];
	const what = isWhole
		? say`The workbook on the screen is not saved to a file as it is now. If the other one is opened in its place, only Undo brings it back.`
		: say`Lines of ${losing.map(titleOf).join(", ")} that stand in this workbook are not in the file that is opened. If it replaces them, only Undo brings them back.`;
	const answer = await ask({
		title: isWhole ? say`Open another workbook?` : say`Replace these sheets?`,
		text: [
			what,
			why
				? say`They cannot be brought together: ${problemWords(why)}`
				: say`If the two are copies of one workbook, bring them together: no line of either is lost, and you see what comes from where first.`,
		],
		answers: [
			...together,
			["leave", say`Open nothing`] as const,
			["replace", isWhole ? say`Open it in place of this one` : say`Replace the sheets`] as const,
		],
	});
	return answer === "leave" ? undefined : answer;
}

/** Whether some line of a sheet is not in the one that would replace it. */
function losesLines(before: Workbook, after: Workbook, file: string): boolean {
	const textOf = (cells: readonly string[]) =>
		cells
			.map((cell) => cell.trim())
			.join("\n")
			.trimEnd();
	const there = new Set(after.tables[file]?.rows.map(textOf));
	return (before.tables[file]?.rows ?? []).some((cells) => {
		const text = textOf(cells);
		return text !== "" && !there.has(text);
	});
}
