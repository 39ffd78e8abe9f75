/** Letters and digits that nobody takes for another one. */
const LETTERS = "0123456789abcdefghjkmnpqrstvwxyz";
const LENGTH = 6;

/** A short random text, which no other window, computer or save hits on. */
export function newId(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(LENGTH));
	return Array.from(bytes, (byte) => LETTERS[byte % LETTERS.length]).join("");
}
