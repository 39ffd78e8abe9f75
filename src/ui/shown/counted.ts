import { shownPlain } from "./shownNumber.ts";

/** "1 pack", "12 packs"; a plural of its own where an s does not make one. */
export function counted(count: number, one: string, many = `${one}s`): string {
	return `${shownPlain(count)} ${count === 1 ? one : many}`;
}

/** "a, b and 3 more": names for reading, no more of them than fit a line. */
export function listed(names: readonly string[], most: number): string {
	const left = names.length - most;
	if (left > 0) return `${names.slice(0, most).join(", ")} and ${left} more`;
	if (names.length < 2) return names.join("");
	return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
