import { distinct, type Problem } from "../problem.ts";

/** Problems that one part of the plan has. */
export interface Part {
	readonly problems: readonly Problem[];
	/** Set for a number that the plan waits for. */
	readonly isNeeded?: true;
}

/**
 * The problems of a plan, found part by part, so that whoever waits for a cell does not
 * wait for all of them: whoever asks for them has them whole.
 */
export class Findings {
	readonly #parts: Iterator<Part>;
	readonly #first: readonly Problem[];
	#gathered: Problem[];
	#all: readonly Problem[] | undefined;
	#made = true;
	#mistake: { readonly error: unknown } | undefined;

	/** @param first what is known before anything is worked out */
	constructor(first: readonly Problem[], parts: Iterator<Part>) {
		this.#first = distinct(first);
		this.#gathered = [...first];
		this.#parts = parts;
	}

	/** Those found up to now. */
	get found(): readonly Problem[] {
		return this.#all ?? this.#first;
	}

	/** Every one, each once, errors before advice. */
	get problems(): readonly Problem[] {
		while (this.goOn());
		return this.found;
	}

	/** Whether every number that the plan waits for has an answer. */
	get made(): boolean {
		while (this.goOn());
		return this.#made;
	}

	/** Works the next part out. @returns whether there are more */
	goOn(): boolean {
		if (this.#all) return false;
		const part = this.#next();
		if (part) this.#take(part);
		else this.#all = inOrder(this.#gathered);
		return part !== undefined;
	}

	/** A mistake of this program stays one, whoever asks next. */
	#next(): Part | undefined {
		if (this.#mistake) throw this.#mistake.error;
		try {
			const { done, value } = this.#parts.next();
			return done ? undefined : value;
		} catch (error) {
			this.#mistake = { error };
			throw error;
		}
	}

	#take({ problems, isNeeded }: Part): void {
		this.#gathered.push(...problems);
		if (isNeeded && problems.some(({ weight }) => weight !== "advice")) this.#made = false;
	}
}

/** Each problem once, errors before advice. */
export function inOrder(problems: readonly Problem[]): Problem[] {
	const advised = (p: Problem) => Number(p.weight === "advice");
	return distinct(problems).sort((a, b) => advised(a) - advised(b));
}
