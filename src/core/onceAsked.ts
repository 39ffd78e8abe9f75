/** What is worked out when somebody first asks, and then kept. */
export function onceAsked<T extends object>(work: () => T): () => T {
	let made: T | undefined;
	return () => {
		made ??= work();
		return made;
	};
}
