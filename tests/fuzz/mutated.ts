import type { Chance } from "./chance.ts";

/** What a mutation may draw on besides the bytes themselves. */
export interface Stock {
	/** Pieces that mean something to the reader. */
	readonly words: readonly Uint8Array[];
	/** Another input, for splicing. */
	readonly other: Uint8Array;
}

type Mutation = (bytes: Uint8Array, chance: Chance, stock: Stock) => Uint8Array;

const LONGEST_INPUT = 3000;
const MOST_MUTATIONS = 6;
const BOUNDARIES = [0, 1, 0x7f, 0x80, 0xff, 0x7fff, 0x8000, 0xffff, 0x7fffffff, 0xffffffff];
const LINE_ENDS = ["\n", "\r\n", "\r", "\n\r", "\u2028", "\0"];

const bytesOf = (text: string) => new TextEncoder().encode(text);
const joined = (...parts: Uint8Array[]) => new Uint8Array(Buffer.concat(parts));
/** Two places of the input, the first not after the second, most often close together. */
function span(bytes: Uint8Array, chance: Chance): [number, number] {
	const from = chance.below(bytes.length + 1);
	const length = chance.below(chance.once(4) ? bytes.length + 1 : 17);
	return [from, Math.min(bytes.length, from + length)];
}
function insert(bytes: Uint8Array, piece: Uint8Array, chance: Chance): Uint8Array {
	const at = chance.below(bytes.length + 1);
	return joined(bytes.subarray(0, at), piece, bytes.subarray(at));
}
/** The input with its lines changed as a list. */
function byLine(change: (lines: string[], chance: Chance) => void): Mutation {
	return (bytes, chance) => {
		const lines = Buffer.from(bytes).toString("latin1").split("\n");
		change(lines, chance);
		return new Uint8Array(Buffer.from(lines.join("\n"), "latin1"));
	};
}
/** The whole input as another program would have written it. */
function recoded(change: (text: string, chance: Chance) => Uint8Array): Mutation {
	return (bytes, chance) => change(new TextDecoder().decode(bytes), chance);
}

/** Every way in which damage and strange programs change a file. */
export const mutations: readonly Mutation[] = [
	function flipBit(bytes, chance) {
		const copy = bytes.slice();
		const at = chance.below(copy.length);
		copy[at] = (copy[at] ?? 0) ^ (1 << chance.below(8));
		return copy;
	},
	function setByte(bytes, chance) {
		const copy = bytes.slice();
		copy[chance.below(copy.length)] = chance.below(256);
		return copy;
	},
	function setNumber(bytes, chance) {
		const copy = bytes.slice();
		const size = chance.pick([2, 4]);
		if (copy.length < size) return copy;
		const value = chance.pick(BOUNDARIES) + chance.pick([0, 0, 1, -1]);
		const at = chance.below(copy.length - size + 1);
		for (let i = 0; i < size; i++) copy[at + i] = Math.floor(value / 256 ** i) & 0xff;
		return copy;
	},
	(bytes, chance) => bytes.slice(0, chance.below(bytes.length + 1)),
	(bytes, chance) => bytes.slice(chance.below(bytes.length + 1)),
	function removePiece(bytes, chance) {
		const [from, to] = span(bytes, chance);
		return joined(bytes.subarray(0, from), bytes.subarray(to));
	},
	function doublePiece(bytes, chance) {
		const [from, to] = span(bytes, chance);
		return joined(bytes.subarray(0, to), bytes.subarray(from, to), bytes.subarray(to));
	},
	(bytes, chance, { words }) => insert(bytes, chance.pick(words), chance),
	(bytes, chance, { words }) => insert(bytes, chance.pick(words), chance),
	function replaceByWord(bytes, chance, { words }) {
		const [from, to] = span(bytes, chance);
		return joined(bytes.subarray(0, from), chance.pick(words), bytes.subarray(to));
	},
	function splice(bytes, chance, { other }) {
		const [from, to] = span(other, chance);
		return insert(bytes, other.subarray(from, to), chance);
	},
	(bytes, chance, { other }) =>
		joined(
			bytes.subarray(0, chance.below(bytes.length + 1)),
			other.slice(chance.below(other.length + 1)),
		),
	(bytes, chance) =>
		insert(
			bytes,
			Uint8Array.from({ length: 1 + chance.below(8) }, () => chance.below(256)),
			chance,
		),
	function swellOnce(bytes, chance) {
		const size = chance.once(8) ? chance.below(2000) : chance.below(60);
		return insert(
			bytes,
			new Uint8Array(size).fill(chance.pick([0x20, 0x22, 0x2c, 0x41, 0x30, 0, 10, 13])),
			chance,
		);
	},
	byLine((lines, chance) => lines.splice(chance.below(lines.length), 1)),
	byLine((lines, chance) => lines.splice(chance.below(lines.length), 0, chance.pick(lines))),
	byLine((lines, chance) => {
		const at = chance.below(lines.length);
		lines[at] = (lines[at] ?? "").replaceAll(
			chance.pick([",", ";", "\t"]),
			chance.pick([",", ";", "\t", ""]),
		);
	}),
	recoded((text, chance) =>
		bytesOf(text.replace(/\r\n?|\n/g, () => (chance.once(3) ? chance.pick(LINE_ENDS) : "\n"))),
	),
	recoded((text, chance) => bytesOf(text.replace(/\r\n?|\n/g, chance.pick(LINE_ENDS)))),
	recoded((text) => bytesOf(`\ufeff${text}`)),
	recoded(
		(text, chance) =>
			new Uint8Array(Buffer.from(chance.once(2) ? `\ufeff${text}` : text, "utf16le")),
	),
	recoded((text) => new Uint8Array(Buffer.from(text, "latin1"))),
	recoded((text, chance) => {
		const swapped = new Uint8Array(Buffer.from(`\ufeff${text}`, "utf16le")).slice();
		for (let i = 0; i + 1 < swapped.length; i += 2)
			[swapped[i], swapped[i + 1]] = [swapped[i + 1] ?? 0, swapped[i] ?? 0];
		return chance.once(2) ? swapped : swapped.slice(2);
	}),
];

/** The input with one to a few things done to it, as damage and strange programs do. */
export function mutated(bytes: Uint8Array, chance: Chance, stock: Stock): Uint8Array {
	let result = bytes;
	for (let left = 1 + chance.below(MOST_MUTATIONS); left > 0; left--)
		result = chance.pick(mutations)(result, chance, stock).slice(0, LONGEST_INPUT);
	return result;
}
