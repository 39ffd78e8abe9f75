/** A part of the program that comes in a further script. */
export interface Later<T> {
	/** The part, where it is there by now. */
	readonly there: T | undefined;
	/** Brings it, once; after a failure it can be asked for again. */
	bring(): Promise<T>;
}

const all: Later<unknown>[] = [];

/**
 * A part that the first screen does not need: it is brought when someone asks for it or
 * when the page has nothing else to do. Nothing is asked of a network that the page did
 * not come from.
 *
 * @param load an `import()`, which the build turns into a script of its own
 */
export function later<T>(load: () => Promise<T>): Later<T> {
	let there: T | undefined;
	let coming: Promise<T> | undefined;
	const part: Later<T> = {
		get there() {
			return there;
		},
		bring() {
			coming ??= load().then(
				(loaded) => {
					there = loaded;
					return loaded;
				},
				(reason) => {
					coming = undefined;
					throw reason;
				},
			);
			return coming;
		},
	};
	all.push(part);
	return part;
}

/** Brings every part, one after the other, whenever the page is idle. What cannot be brought now is tried when it is asked for. */
export function bringWhenIdle(): void {
	const idle = window.requestIdleCallback ?? ((next: () => void) => setTimeout(next, 200));
	const next = (parts: readonly Later<unknown>[]) => {
		const [first, ...rest] = parts;
		if (first) idle(() => first.bring().then(...both(() => next(rest))));
	};
	next(all);
}

function both<F>(then: F): [F, F] {
	return [then, then];
}
