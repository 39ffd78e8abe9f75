/** Something of each thing, in order. What stands there several times, as days of a plan that are alike, is worked out once. */
export function ofEach<T, R>(things: readonly T[], of: (thing: T) => R): R[] {
	const known = new Map<T, R>();
	for (const thing of things) if (!known.has(thing)) known.set(thing, of(thing));
	return things.map((thing) => known.get(thing) as R);
}
