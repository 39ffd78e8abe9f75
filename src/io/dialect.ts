/** How one file separates cells and ends lines. */
export interface Dialect {
	readonly separator: "," | ";" | "\t";
	/** "\n" also stands for CRLF, and for files that mix the two. */
	readonly lineEnd: "\n" | "\r";
}

const SEPARATORS = [",", ";", "\t"] as const;

/**
 * Decides from the header line alone.
 *
 * Column keys hold no separators, so the header cannot mislead; data can
 * ("0,5;0,7"). The separator that occurs most often outside quotes wins; where
 * none occurs the sheet has one column.
 */
export function dialectOf(text: string): Dialect {
	const counts = { ",": 0, ";": 0, "\t": 0 };
	let quoted = false;
	let lineEnd: Dialect["lineEnd"] = "\n";
	for (let at = 0; at < text.length; at++) {
		const character = text[at];
		if (character === '"') quoted = !quoted;
		else if (quoted) continue;
		else if (character === "," || character === ";" || character === "\t") counts[character]++;
		else if (character === "\n") break;
		else if (character === "\r") {
			if (text[at + 1] !== "\n") lineEnd = "\r";
			break;
		}
	}
	const separator = SEPARATORS.reduce((best, next) => (counts[next] > counts[best] ? next : best));
	return { separator, lineEnd };
}
