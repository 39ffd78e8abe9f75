/** What takes long: worked out a step at a time, or at once for whoever asks for it; then kept. */
export class InSteps<T extends object> {
	readonly #begin: () => Iterator<void, T>;
	#steps: Iterator<void, T> | undefined;
	#made: T | undefined;

	constructor(begin: () => Iterator<void, T>) {
		this.#begin = begin;
	}

	/** The whole of it. */
	get made(): T {
		while (this.#made === undefined) this.goOn();
		return this.#made;
	}

	/** Works out the next step; after one that failed it begins anew. @returns whether there are more */
	goOn(): boolean {
		if (this.#made !== undefined) return false;
		const steps = this.#steps ?? this.#begin();
		this.#steps = undefined;
		const { done, value } = steps.next();
		if (done) this.#made = value;
		else this.#steps = steps;
		return !done;
	}
}
