/** What the switches of the broken program read. */
interface Switches {
	activeMutant?: string;
	hitCount?: number;
	hitLimit?: number;
	/** 1 for each mutant that has been come by. */
	readonly met: Uint8Array;
}

const MOST_MUTANTS = 100_000;
const switches: Switches = { met: new Uint8Array(MOST_MUTANTS) };
(globalThis as { __stryker__?: Switches }).__stryker__ = switches;

/** A mutant met so often in one file of tests goes round for ever. */
const MOST_HITS = 5_000_000;

const SWITCH = /stryMutAct_9fa48\("(\d+)"\)/g;
const COMES_BY = /stryCov_9fa48\(("[^)]*)\)/g;

/** The text of a script with no mutant in place, which notes those that it comes by. */
export function noting(text: string): string {
	const noted = text
		.replace(SWITCH, "false")
		.replace(COMES_BY, (_, ids: string) => `(${ids.replace(/"(\d+)"/g, "met_9fa48[$1] = 1")})`);
	return `const met_9fa48 = globalThis.__stryker__.met;${noted}`;
}

/** The text of a script with one mutant in place and nothing left of the others. */
export function brokenBy(mutant: string, text: string): string {
	return text
		.replace(SWITCH, (it, other: string) => (other === mutant ? it : "false"))
		.replace(COMES_BY, "0");
}

/** Does something and notes the mutants that it comes by: 1 for each of so many. */
export function noted(mutants: number, act: () => void): Uint8Array {
	switches.met.fill(0);
	act();
	return switches.met.slice(0, mutants);
}

/** Does something with a mutant in place. @throws whatever it throws, and where it comes by the mutant for ever */
export function withMutant(mutant: string, act: () => void): void {
	Object.assign(switches, { activeMutant: mutant, hitCount: 0, hitLimit: MOST_HITS });
	try {
		act();
	} finally {
		delete switches.activeMutant;
	}
}
