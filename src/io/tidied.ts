/** A quote mark that does not enclose a cell, by its place in the text. */
export interface Slip {
	readonly at: number;
	/** "open": never closed. "loose": the cell goes on after the closing mark. */
	readonly kind: "open" | "loose";
}

/**
 * A CSV text as RFC 4180 has it, so that a reader of the standard takes every cell as it stands.
 *
 * Line ends of any kind, also mixed, become "\n"; those inside quotes are text and
 * stay. A cell whose quote marks do not enclose it is put in quotes with all its
 * letters, the marks among them. Each letter is looked at a fixed number of times.
 */
export function tidied(
	text: string,
	separator: string,
): { readonly text: string; readonly slips: readonly Slip[] } {
	const mark = new RegExp(`(?<=^|[${separator}\\r\\n])"|\\r\\n?`, "g");
	const end = new RegExp(`[${separator}\\r\\n]|$`, "g");
	const slips: Slip[] = [];
	let tidy = "";
	let done = 0;
	const put = (from: number, to: number, piece: string) => {
		tidy += text.slice(done, from) + piece;
		done = to;
		mark.lastIndex = to;
	};
	for (let found = mark.exec(text); found; found = mark.exec(text)) {
		if (found[0] !== '"') {
			put(found.index, mark.lastIndex, "\n");
			continue;
		}
		const closing = closingMark(text, found.index);
		end.lastIndex = closing + 1;
		const to = closing < 0 ? text.length : (end.exec(text)?.index ?? text.length);
		mark.lastIndex = to;
		if (closing >= 0 && text.slice(closing + 1, to).trim() === "") continue;
		slips.push({ at: tidy.length + found.index - done, kind: closing < 0 ? "open" : "loose" });
		put(found.index, to, `"${text.slice(found.index, to).replaceAll('"', '""')}"`);
	}
	return { text: tidy + text.slice(done), slips };
}

/** The quote mark that closes the one at `opening`; one written twice closes nothing. -1: there is none. */
function closingMark(text: string, opening: number): number {
	let at = text.indexOf('"', opening + 1);
	while (at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
	return at;
}
