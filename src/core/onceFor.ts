/**
 * A function of an immutable object that is worked out once for each.
 *
 * What an edit left alone is the same object as before, so its result is too; it is
 * let go together with the object. Only for pure functions whose results nobody changes.
 */
export function onceFor<K extends object, V>(work: (of: K) => V): (of: K) => V {
	const results = new WeakMap<K, { readonly value: V }>();
	return (of) => {
		const known = results.get(of);
		if (known) return known.value;
		const value = work(of);
		results.set(of, { value });
		return value;
	};
}
