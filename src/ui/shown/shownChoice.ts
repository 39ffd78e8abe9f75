/** One word of a closed list for reading: "in_service" becomes "in service". Other text stays as typed. */
export function shownChoice(text: string, options: readonly string[] | undefined): string {
	return options?.includes(text) ? text.replaceAll("_", " ") : text;
}
