import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, resolve } from "node:path";
import vm from "node:vm";

export type Script = (exports: object, require: (name: string) => unknown, module: object) => void;

const outside = createRequire(import.meta.url);
const scripts = new Map<string, Script>();

/** A script made ready to run, once for all the times that it is loaded. */
export function script(path: string, change = (text: string) => text): Script {
	let made = scripts.get(path);
	if (!made) {
		made = compiled(change(readFileSync(path, "utf8")), path);
		scripts.set(path, made);
	}
	return made;
}

export function compiled(text: string, path: string): Script {
	return vm.runInThisContext(`(function (exports, require, module) {${text}\n})`, {
		filename: path,
	});
}

/**
 * Loads a script and all that it needs afresh, so that nothing remembered under one mutant is
 * left for the next. Packages are loaded once.
 *
 * @param scriptAt what stands at a path
 */
export function load(path: string, scriptAt: (path: string) => Script): unknown {
	const loaded = new Map<string, { exports: object }>();
	const at = (wanted: string): object => {
		let module = loaded.get(wanted);
		if (module) return module.exports;
		module = { exports: {} };
		loaded.set(wanted, module);
		const from = dirname(wanted);
		const need = (name: string) => (name.startsWith(".") ? at(resolve(from, name)) : outside(name));
		scriptAt(wanted)(module.exports, need, module);
		return module.exports;
	};
	return at(path);
}
