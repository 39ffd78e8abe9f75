const [QUOTE, COMMA, LINE_END] = [34, 44, 10];

/**
 * Where the last whole record of a text ends, behind its line end; 0 where none is whole.
 * Cells are parted by commas, and a line end within quote marks ends no record.
 *
 * @example recordsEnd('a,"b\nc"\nd,"e\n') // 8
 */
export function recordsEnd(text: string): number {
	let end = 0;
	let isQuoted = false;
	let isCellStart = true;
	for (let at = 0; at < text.length; at++) {
		const sign = text.charCodeAt(at);
		if (isQuoted) {
			if (sign !== QUOTE) continue;
			if (text.charCodeAt(at + 1) === QUOTE) at++;
			else isQuoted = false;
		} else if (sign === LINE_END) {
			end = at + 1;
			isCellStart = true;
		} else {
			if (sign === QUOTE && isCellStart) isQuoted = true;
			isCellStart = sign === COMMA;
		}
	}
	return end;
}
