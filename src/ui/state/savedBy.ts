const KEY = "basinbook-saved-by";

/** The name that the person gave, to be known by in other copies; "" where none was given. */
export function savedBy(): string {
	try {
		return localStorage.getItem(KEY) ?? "";
	} catch {
		return "";
	}
}

export function keepSavedBy(name: string): void {
	try {
		localStorage.setItem(KEY, name.trim());
	} catch {
		// A browser that keeps nothing asks again.
	}
}
