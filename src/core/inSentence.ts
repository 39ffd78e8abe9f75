/** A label within a sentence: its first letter small, the rest as it is. @example "Pack size" → "pack size" */
export function inSentence(label: string): string {
	return label.charAt(0).toLowerCase() + label.slice(1);
}
