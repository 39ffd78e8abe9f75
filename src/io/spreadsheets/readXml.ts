/// <reference path="./saxen.d.ts" />
import { decode, Parser } from "saxen";

/** What is told of an XML text while it is read; names come without what stands before their colon. */
export interface XmlListener {
	/** @param attribute text of an attribute by its name */
	open?(name: string, attribute: (name: string) => string | undefined): void;
	close?(name: string): void;
	text?(text: string): void;
}

/** Attributes of a program's own, which repeat those of the format. */
const REPEATED = "calcext:";

/**
 * Reads an XML part of a spreadsheet from beginning to end. What it defines for itself
 * (entities, a document type) is not followed, so nothing swells.
 *
 * @throws where it is no XML in UTF-8
 */
export function readXml(bytes: Uint8Array, { open, close, text }: XmlListener): void {
	const parser = new Parser();
	if (open)
		parser.on("openTag", (name, attributes) => {
			let kept: Readonly<Record<string, string>> | undefined;
			open(plain(name), (wanted) => {
				kept ??= attributes();
				const own = kept;
				const key = wanted in own ? wanted : Object.keys(own).find((one) => isNamed(one, wanted));
				return key === undefined ? undefined : decode(String(own[key]));
			});
		});
	if (close) parser.on("closeTag", (name) => close(plain(name)));
	if (text) {
		parser.on("text", (piece) => text(decode(piece)));
		parser.on("cdata", (piece) => text(piece));
	}
	parser.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
}

function isNamed(name: string, wanted: string): boolean {
	return name.endsWith(`:${wanted}`) && !name.startsWith(REPEATED);
}

function plain(name: string): string {
	return name.slice(name.indexOf(":") + 1);
}
