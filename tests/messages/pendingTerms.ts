/** Translations whose words are still to be brought to those of the glossary: language → term → messages. */
export const pending: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
	fr: {},
	pt: {},
};
