const MARKS = /\p{M}/gu;
const BETWEEN_THOUSANDS = /(\d)\s(?=\d{3}(?!\d))/g;
const SPACES = /\s+/g;
const APOSTROPHES = /’/g;

/** A text as it is searched: capitals, accents, kinds of space and of apostrophe and the gaps in 10 000 do not matter. */
export function folded(text: string): string {
	return text
		.normalize("NFD")
		.replace(MARKS, "")
		.replace(BETWEEN_THOUSANDS, "$1")
		.replace(SPACES, " ")
		.replace(APOSTROPHES, "'")
		.toLowerCase();
}
