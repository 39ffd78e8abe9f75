/**
 * The name of a file, without the folders before it, whichever system wrote the path.
 *
 * @example lastOfPath("stick/births.csv") // "births.csv"
 */
export function lastOfPath(path: string): string {
	return path.split(/[/\\]/).at(-1) ?? "";
}
