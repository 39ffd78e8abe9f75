import { appendFile, mkdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import type { TextTable } from "../../core/workbook.ts";
import type { UnitWorkbook } from "../readUnits.ts";

/** Units of a pile, which are read and planned together. */
const UNITS = 32;
/** Text that waits to be written, in characters. */
const ENOUGH = 1 << 23;

type Row = readonly [file: string, line: number, unit: string, ...cells: string[]];

/** Columns of each file of a set. */
export type Headers = Readonly<Record<string, readonly string[]>>;

export interface Pile {
	readonly path: string;
	readonly units: readonly string[];
}

/**
 * The rows of a set of many units, sorted onto piles of a few units each, on the disk: so a
 * set of any size, in any order, is gone through with the room of a pile. Units keep the
 * order in which their names first stand in the set.
 */
export class UnitPiles {
	readonly #folder: string;
	readonly #pileOf = new Map<string, number>();
	#waiting = new Map<number, string[]>();
	#characters = 0;

	constructor(folder: string) {
		this.#folder = folder;
	}

	get units(): number {
		return this.#pileOf.size;
	}

	async add(file: string, line: number, unit: string, cells: readonly string[]): Promise<void> {
		const pile = this.#pileOf.get(unit) ?? Math.floor(this.#pileOf.size / UNITS);
		this.#pileOf.set(unit, pile);
		const text = `${JSON.stringify([file, line, unit, ...cells] satisfies Row)}\n`;
		const waiting = this.#waiting.get(pile);
		if (waiting) waiting.push(text);
		else this.#waiting.set(pile, [text]);
		this.#characters += text.length;
		if (this.#characters > ENOUGH) await this.#write();
	}

	async *piles(): AsyncGenerator<Pile> {
		await this.#write();
		let units: string[] = [];
		for (const unit of this.#pileOf.keys()) {
			units.push(unit);
			if (units.length < UNITS) continue;
			yield this.#pile(units);
			units = [];
		}
		if (units.length > 0) yield this.#pile(units);
	}

	#pile(units: readonly string[]): Pile {
		return { path: this.#path(this.#pileOf.get(units[0] as string) as number), units };
	}

	/** Lets go of all that lies on the disk. */
	async clear(): Promise<void> {
		this.#pileOf.clear();
		this.#waiting.clear();
		this.#characters = 0;
		await rm(this.#folder, { recursive: true, force: true });
	}

	async #write(): Promise<void> {
		await mkdir(this.#folder, { recursive: true });
		for (const [pile, texts] of this.#waiting) await appendFile(this.#path(pile), texts.join(""));
		this.#waiting = new Map();
		this.#characters = 0;
	}

	#path(pile: number): string {
		return join(this.#folder, `${pile}.jsonl`);
	}
}

/** The workbooks of a pile's units, as readUnits has them. @param wanted which of its units */
export async function unitsOfPile(
	{ path, units: wanted }: Pile,
	headers: Headers,
): Promise<UnitWorkbook[]> {
	const tablesOf = new Map(
		wanted.map((unit) => [
			unit,
			Object.fromEntries(
				Object.entries(headers).map(([file, header]) => [
					file,
					{ header, rows: [] as string[][], lines: [] as number[] },
				]),
			),
		]),
	);
	for (const text of (await readFile(path, "utf8")).split("\n")) {
		if (text === "") continue;
		const [file, line, unit, ...cells] = JSON.parse(text) as Row;
		const table = tablesOf.get(unit)?.[file];
		table?.rows.push(cells);
		table?.lines.push(line);
	}
	return [...tablesOf].map(([name, tables]) => ({
		name,
		workbook: { tables: tables satisfies Record<string, TextTable> },
	}));
}
