/** The words of a language by file, from its folder: "core/kits.json" → message → words. */
export type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** What becomes of a catalogue that is put in order. */
export interface Filed {
	readonly files: Catalogue;
	/** Messages without words, with the file in which they stand and wait for them. */
	readonly missing: readonly (readonly [message: string, file: string])[];
	/** What nobody says any longer, with the words it had. */
	readonly spare: readonly (readonly [message: string, words: string])[];
}

/**
 * Puts every message into the file that is named after the folder that says it, in
 * alphabetical order; one without words stands there with none.
 *
 * @param messages each message and its folder
 * @throws where one message has two different translations: only a person can choose
 */
export function filed(messages: ReadonlyMap<string, string>, catalogue: Catalogue): Filed {
	const known = wordsOf(catalogue);
	const files: Record<string, Record<string, string>> = {};
	for (const [message, folder] of [...messages].sort(([a], [b]) => (a < b ? -1 : 1))) {
		files[`${folder}.json`] ??= {};
		Object.assign(files[`${folder}.json`] ?? {}, { [message]: known.get(message) ?? "" });
	}
	return {
		files,
		missing: [...messages]
			.filter(([message]) => !known.has(message))
			.map(([message, folder]) => [message, `${folder}.json`] as const),
		spare: [...known].filter(([message]) => !messages.has(message)),
	};
}

/** Every message that has words. */
export function wordsOf(catalogue: Catalogue): ReadonlyMap<string, string> {
	const known = new Map<string, string>();
	for (const [file, entries] of Object.entries(catalogue))
		for (const [message, words] of Object.entries(entries)) {
			if (words === "") continue;
			const other = known.get(message) ?? words;
			if (other !== words)
				throw new Error(`${file}: "${message}" has two translations: "${other}" and "${words}".`);
			known.set(message, words);
		}
	return known;
}
