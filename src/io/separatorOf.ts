const SEPARATORS = [",", ";", "\t"] as const;

export type Separator = (typeof SEPARATORS)[number];

/**
 * How a file parts its cells, decided from the header line alone.
 *
 * Column keys hold no separators, so the header cannot mislead; data can
 * ("0,5;0,7"). The separator that occurs most often outside quotes wins; where
 * none occurs the sheet has one column.
 */
export function separatorOf(text: string): Separator {
	const counts = { ",": 0, ";": 0, "\t": 0 };
	let quoted = false;
	for (const character of text) {
		if (character === '"') quoted = !quoted;
		else if (quoted) continue;
		else if (character === "," || character === ";" || character === "\t") counts[character]++;
		else if (character === "\n" || character === "\r") break;
	}
	return SEPARATORS.reduce((best, next) => (counts[next] > counts[best] ? next : best));
}
