import { columnNames } from "./columnNames.ts";
import type { SheetDescent } from "./descent.ts";

/**
 * Whether what two copies remember of a sheet cannot be true: that two rows of one are the
 * same row, that a row is there and was deleted, or that a row says two things although
 * neither changed it.
 *
 * Then a memory is damaged, and whichever row it took for which, lines would be doubled. One that
 * takes a row for another of a number that nobody has, and says it changed all of it, may be true:
 * two rows of one name that came together go by the number of one of them, and nothing tells the
 * other from it.
 */
export function isContradictory(ours: SheetDescent, theirs: SheetDescent): boolean {
	const places = new Map(theirs.origins.map((origin, at) => [origin, at]));
	const isTwice = places.size < theirs.origins.length;
	if (isTwice || new Set(ours.origins).size < ours.origins.length) return true;
	if (isThereAndGone(ours) || isThereAndGone(theirs)) return true;
	const differ = unsaidDifference(ours, theirs);
	return ours.origins.some((origin, at) => {
		const partner = places.get(origin);
		return partner !== undefined && differ(origin, at, partner);
	});
}

function isThereAndGone({ origins, gone }: SheetDescent): boolean {
	return gone.size > 0 && origins.some((origin) => gone.has(origin));
}

/** What tells whether two rows of one origin differ in a column that neither copy says it changed. */
function unsaidDifference(ours: SheetDescent, theirs: SheetDescent) {
	const [of, to] = [columnNames(ours.table), columnNames(theirs.table)];
	const columns = [...new Set([...of, ...to])].map((name) => ({
		name,
		our: of.indexOf(name),
		their: to.indexOf(name),
	}));
	return (origin: string, ourRow: number, theirRow: number): boolean => {
		const one = ours.table.rows[ourRow] as readonly string[];
		const other = theirs.table.rows[theirRow] as readonly string[];
		const [changed, otherChanged] = [ours.changed.get(origin), theirs.changed.get(origin)];
		return columns.some(({ name, our, their }) => {
			const [text, otherText] = [one[our] ?? "", other[their] ?? ""];
			// Nearly all are the same to the letter.
			if (text === otherText || changed?.has(name) || otherChanged?.has(name)) return false;
			return text.trim() !== otherText.trim();
		});
	};
}
