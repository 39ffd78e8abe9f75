import { twoFiles } from "../core/merge/conflictProblem.ts";
import type { Problem } from "../core/problem.ts";
import { lastOfPath } from "../io/lastOfPath.ts";
import type { ReadFiles } from "../io/readFiles.ts";

interface OtherFiles {
	readonly files: Readonly<Record<string, Uint8Array>>;
	readonly problems: readonly Problem[];
}

type Copy = Pick<ReadFiles, "others" | "problems">;

/**
 * What lies beside the sheets of two copies and belongs to no workbook, as it is. Of two
 * files of one name the one that was changed since the base counts; where nobody can tell,
 * ours, and it is said. A spreadsheet's sheet of another kind stays where it is, which is said.
 */
export function otherFiles(ours: Copy, theirs: Copy, base?: Copy): OtherFiles {
	const [our, their, old] = [ours, theirs, base].map(byName);
	const files: Record<string, Uint8Array> = {};
	const problems: Problem[] = [ours, theirs].flatMap(sheetsLeft);
	for (const key of new Set([...(our?.keys() ?? []), ...(their?.keys() ?? [])])) {
		const [one, other, before] = [our?.get(key), their?.get(key), old?.get(key)];
		const isTheirs = !one || (other && before && isSame(one.bytes, before.bytes));
		const { name, bytes } = (isTheirs ? other : one) as Own;
		files[name] = bytes;
		if (one && other && !isSame(one.bytes, other.bytes) && !isKnown([one, other], before))
			problems.push(twoFiles(name));
	}
	return { files, problems };
}

interface Own {
	readonly name: string;
	readonly bytes: Uint8Array;
}

/** By their names without folders, as a disk that knows no large letters has them. */
function byName(copy: Copy | undefined): ReadonlyMap<string, Own> {
	const own = (copy?.others ?? []).map(({ name, bytes }): [string, Own] => {
		const last = lastOfPath(name);
		return [last.toLowerCase(), { name: last, bytes }];
	});
	return new Map(own);
}

function isKnown(both: readonly Own[], before: Own | undefined): boolean {
	return before !== undefined && both.some(({ bytes }) => isSame(bytes, before.bytes));
}

function isSame(one: Uint8Array, other: Uint8Array): boolean {
	return one.length === other.length && one.every((byte, at) => byte === other[at]);
}

function sheetsLeft({ others = [], problems }: Copy): Problem[] {
	const known = new Set(byName({ others, problems }).keys());
	return problems.filter(
		({ code, file }) => code === "unknown-file" && !known.has(file.toLowerCase()),
	);
}
