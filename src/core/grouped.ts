/** Things by what they belong to, each group in the order added: to go through a long list once, however many groups there are. */
export class Grouped<K, T> {
	readonly #groups = new Map<K, T[]>();

	add(key: K, thing: T): void {
		const before = this.#groups.get(key);
		if (before) before.push(thing);
		else this.#groups.set(key, [thing]);
	}

	of(key: K): readonly T[] {
		return this.#groups.get(key) ?? [];
	}
}
