/** What numbers and dates of other programs have in them: marks of thousands and decimals, of days and months, signs of money and shares. */
const OTHERS = [
	// A comma between digits stands in quotes where commas part the cells.
	/"[^"\n]*\d,\d/,
	// A point with three digits behind it parts thousands in half of the world, behind a nought nowhere.
	/(?:^|[,"\n])[+-]?[1-9]\d{0,2}\.\d{3}(?:$|[,".\r\n])/,
	/\d[/.]\d{1,2}[/.]\d/,
	/\d[ \u00a0\u202f\u2009'’]\d{3}(?!\d)/,
	/\d\s?%|\p{Sc}/u,
];

/**
 * Whether a long text with commas between its cells has numbers and dates in the clear form
 * only, so that no cell of it needs to be looked at. It may say no of a text that is clear.
 */
export function isClearText(text: string): boolean {
	return !OTHERS.some((other) => other.test(text));
}
