import { expect as judged } from "expect";

/** A test as it stands in its file, to be run as often as there are mutants. */
export interface Collected {
	readonly name: string;
	run(): unknown;
}

type Body = (...row: never[]) => unknown;

const tests: Collected[] = [];
const before: (() => unknown)[] = [];
let around = "";

/** The tests of the file that has just been loaded, and what must run before them. */
const collected = { tests, before };
export type Loaded = typeof collected;
(globalThis as { loaded?: Loaded }).loaded = collected;

function each(add: (name: string, body: () => unknown) => void) {
	return (table: readonly unknown[]) => (name: string, body: Body) => {
		for (const [at, row] of table.entries())
			add(`${name} #${at}`, () => body(...((Array.isArray(row) ? row : [row]) as never[])));
	};
}

function addTest(name: string, body: () => unknown): void {
	tests.push({ name: around + name, run: body });
}

function addGroup(name: string, body: () => unknown): void {
	const outside = around;
	around += `${name} > `;
	body();
	around = outside;
}

/** Stands in for the test library where mutants are tested: the same words, nothing else. */
export const test = Object.assign(addTest, { each: each(addTest) });
export const describe = Object.assign(addGroup, { each: each(addGroup) });
export const beforeAll = (body: () => unknown) => before.push(body);
/** A second argument only names the thing; what counts here is whether it fails. */
export const expect = Object.assign((actual: unknown, _name?: string) => judged(actual), judged);
