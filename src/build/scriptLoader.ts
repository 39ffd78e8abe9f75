/** What a script of the site is made of: its parts, each with the parts that it needs, by name. */
type Part = (
	require: (path: string) => unknown,
	exports: object,
	module: { exports: object },
) => void;

/** What the scripts of the site call; it stands in the page as `basinbook`. */
export interface Scripts {
	/** Takes up a part that a script has brought. */
	define(name: string, needs: readonly string[], part: Part): void;
	/** The exports of a part that is there; its code runs when it is first asked for. */
	require(path: string): unknown;
	/** Brings a part, and all that it needs, by a script element of its own. */
	load(name: string): Promise<void>;
}

/** As much of a script element and of the page as is needed, so that the build knows no browser. */
interface ScriptElement {
	src: string;
	onload: () => void;
	onerror: () => void;
	remove(): void;
}

interface Page {
	createElement(tag: "script"): ScriptElement;
	readonly head: { append(script: ScriptElement): void };
}

/**
 * Brings further scripts into the page by script elements, because browsers refuse module
 * scripts over file://, and the content policy allows no text to be run.
 *
 * The build writes this function as it stands at the head of the first script, so it may
 * use nothing from outside itself. A script that could not be fetched is asked for again
 * the next time.
 */
export function scriptLoader(page: Page): Scripts {
	const parts = new Map<string, { needs: readonly string[]; run: Part }>();
	const made = new Map<string, { exports: object }>();
	const asked = new Map<string, Promise<void>>();

	const fetched = (name: string): Promise<void> =>
		new Promise((there, failed) => {
			if (parts.has(name)) {
				there();
				return;
			}
			const script = page.createElement("script");
			script.src = `./${name}`;
			script.onload = () =>
				parts.has(name) ? there() : failed(new Error(`${name} holds no part`));
			script.onerror = () => {
				script.remove();
				failed(new Error(`${name} could not be loaded`));
			};
			page.head.append(script);
		});
	const load = (name: string): Promise<void> => {
		const known = asked.get(name);
		if (known) return known;
		const loading = fetched(name)
			.then(() => Promise.all((parts.get(name)?.needs ?? []).map(load)))
			.then(() => undefined);
		asked.set(name, loading);
		loading.catch(() => asked.delete(name));
		return loading;
	};
	const require = (path: string): unknown => {
		const name = path.replace("./", "");
		const known = made.get(name);
		if (known) return known.exports;
		const module = { exports: {} };
		made.set(name, module);
		parts.get(name)?.run(require, module.exports, module);
		return module.exports;
	};
	return {
		define: (name, needs, run) => void parts.set(name, { needs, run }),
		require,
		load,
	};
}
