/** What is used of the XML reader, which comes without types. */
declare module "saxen" {
	export class Parser {
		on(
			event: "openTag",
			then: (name: string, attributes: () => Readonly<Record<string, string>>) => void,
		): this;
		on(event: "closeTag", then: (name: string) => void): this;
		on(
			event: "text" | "cdata",
			then: (text: string, decode: (text: string) => string) => void,
		): this;
		/** @throws where the text is no XML */
		parse(xml: string): this;
	}
	export function decode(text: string): string;
}
