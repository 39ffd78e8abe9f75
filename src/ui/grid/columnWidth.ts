const CHARACTER_PX = 9.4;
const WIDE = /[mwMW%]/g;
const HEAD_CHARACTER_PX = 8.4;
const PADDING_PX = 24;
const NARROWEST_PX = 76;
const WIDEST_PX = 400;

/** Width that shows these texts on one line each, the column's name and its unit on two. */
export function columnWidth(label: string, unit: string, texts: Iterable<string>): number {
	let longest = 0;
	for (const text of texts) longest = Math.max(longest, lengthOf(text));
	const head = Math.max(twoLines(label), twoLines(unit));
	const wanted = Math.max(longest * CHARACTER_PX, head * HEAD_CHARACTER_PX) + PADDING_PX;
	return Math.round(Math.min(WIDEST_PX, Math.max(NARROWEST_PX, wanted)));
}

/** Characters of usual width; in a short word a few wide ones would not fit. */
function lengthOf(text: string): number {
	return text.length + (text.match(WIDE)?.length ?? 0) / 2;
}

/** The shortest line, in characters, on two of which a text fits. */
function twoLines(text: string): number {
	const words = text.split(/\s+/).map((word) => word.length);
	const length = (part: readonly number[]) => part.reduce((sum, word) => sum + word + 1, -1);
	const breaks = words.map((_, at) =>
		Math.max(length(words.slice(0, at)), length(words.slice(at))),
	);
	return Math.min(...breaks);
}

/** True for a text that is longer than its column is wide. */
export function needsTwoLines(text: string, width: number): boolean {
	return text.length * HEAD_CHARACTER_PX + PADDING_PX > width;
}
