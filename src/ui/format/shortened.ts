/** Fewer letters say nothing. */
const FEWEST = 6;

/** A name of at most so many letters, but 6 or more: cut after a letter or digit, with a sign that it goes on, where it is longer. */
export function shortened(name: string, most: number): string {
	const letters = [...name];
	if (letters.length <= Math.max(FEWEST, most)) return name;
	const kept = letters.slice(0, Math.max(FEWEST, most) - 1).join("");
	return `${kept.replace(/[\s.,:;·-]+$/u, "")}…`;
}
