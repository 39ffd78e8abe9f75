/** Words at the beginning of a sentence or heading: the first letter large, the rest as it is. @example "as it is now" → "As it is now" */
export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
