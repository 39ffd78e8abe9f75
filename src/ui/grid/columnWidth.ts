const CHARACTER_PX = 8.2;
const PADDING_PX = 26;
const NARROWEST_PX = 76;
const WIDEST_PX = 280;

/** Width that shows the longest of these texts on one line, and the longest word of the header. */
export function columnWidth(header: string, texts: Iterable<string>): number {
	let longest = Math.max(...header.split(/[\s,]+/).map((word) => word.length), header.length / 3);
	for (const text of texts) longest = Math.max(longest, text.length);
	return Math.round(
		Math.min(WIDEST_PX, Math.max(NARROWEST_PX, longest * CHARACTER_PX + PADDING_PX)),
	);
}
