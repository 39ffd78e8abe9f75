/** How often a terminal is written to anew, and a file gets a further line, in ms. */
const TERMINAL_MS = 200;
const FILE_MS = 10_000;
const PER_SECOND = 1000;

interface Out {
	/** A terminal, whose last line can be written over. */
	readonly isTerminal: boolean;
	write(text: string): unknown;
}

/** Says how far a long run has come: units done of all, and how many a second. */
export class Progress {
	readonly #out: Out;
	readonly #clock: () => number;
	readonly #began: number;
	#all: number | undefined;
	#done = 0;
	#said: number;

	constructor(out: Out, clock: () => number = () => performance.now()) {
		this.#out = out;
		this.#clock = clock;
		this.#began = clock();
		this.#said = this.#began;
	}

	/** Once it is known how many there are. */
	expect(all: number): void {
		this.#all = all;
	}

	add(done: number): void {
		this.#done += done;
		const now = this.#clock();
		if (now - this.#said < (this.#out.isTerminal ? TERMINAL_MS : FILE_MS)) return;
		this.#said = now;
		this.#out.write(this.#out.isTerminal ? `\r${this.#line(now)}` : `${this.#line(now)}\n`);
	}

	/** Leaves a terminal on a new line. */
	end(): void {
		if (this.#out.isTerminal && this.#said !== this.#began) this.#out.write("\n");
	}

	#line(now: number): string {
		const each = (this.#done * PER_SECOND) / (now - this.#began);
		const of = this.#all === undefined ? "" : `/${this.#all}`;
		return `${this.#done}${of} units, ${each.toPrecision(3)} a second`;
	}
}
