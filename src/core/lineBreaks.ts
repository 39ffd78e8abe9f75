/** Line ends inside a text. */
export function lineBreaks(text: string): number {
	return text.includes("\n") || text.includes("\r") ? (text.match(/\r\n?|\n/g)?.length ?? 0) : 0;
}
