import { inSmallLetters, registerMark } from "./registerMark.ts";

/** The marks found in a text, each once, and what is none. */
export interface Marks {
	readonly marks: readonly string[];
	readonly unknown: readonly string[];
}

const BETWEEN = /^[\s,;]+/;

/**
 * Marks of kits in a text, with spaces, commas or semicolons between. A mark that has a
 * space in itself is known by the register: the longest one that fits counts.
 *
 * @param known marks of the register
 * @example "K1 Kit 2, K3" with K1, Kit 2, K3 → K1, Kit 2, K3
 */
export function marksReader(known: readonly string[]): (text: string) => Marks {
	const markOf = registerMark(known);
	const longestFirst = [...known]
		.sort((a, b) => b.length - a.length)
		.map((mark) => ({ mark, lower: inSmallLetters(mark) }));
	return (text) => {
		const marks = new Set<string>();
		const unknown: string[] = [];
		let rest = text.replace(BETWEEN, "");
		while (rest !== "") {
			const lower = inSmallLetters(rest);
			const fitting = longestFirst.find(
				(one) => lower.startsWith(one.lower) && /^($|[\s,;])/.test(rest.slice(one.lower.length)),
			);
			const mark = fitting && markOf(rest.slice(0, fitting.mark.length));
			const [word] = rest.split(/[\s,;]/, 1) as [string];
			if (mark === undefined) unknown.push(word);
			else marks.add(mark);
			rest = rest.slice((mark ?? word).length).replace(BETWEEN, "");
		}
		return { marks: [...marks], unknown };
	};
}
